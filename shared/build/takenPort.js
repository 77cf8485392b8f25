/** The port that the manifest names cannot be another one: who has it already is told before anything is built. */
import { createServer } from "node:net";

/**
 * @param {number} port on this machine
 * @returns {Promise<void>} once it is known to be free
 * @throws {Error} in words for whoever started the server, where something else listens there
 */
export function mustBeFree(port) {
  return new Promise((free, taken) => {
    const server = createServer();
    server.once("error", (error) =>
      taken(
        error.code === "EADDRINUSE"
          ? new Error(`Port ${port} is taken, perhaps by an earlier start. manifest.xml names it, so stop that first and start again.`)
          : error,
      ),
    );
    server.listen(port, "localhost", () => server.close(() => free()));
  });
}
