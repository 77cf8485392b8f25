/** Whether two names are of one file. */
import { stat } from "node:fs/promises";

/** However the two are spelled, and through links; `false` where one of them is not there. */
export async function isSameFile(one: string, other: string): Promise<boolean> {
  const identity = (path: string) =>
    stat(path, { bigint: true }).then(
      ({ dev, ino }) => `${dev} ${ino}`,
      () => null,
    );
  const found = await identity(one);
  return found !== null && found === (await identity(other));
}
