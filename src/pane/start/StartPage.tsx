import type { PageProps } from "../page";
import { StartForm } from "./StartForm";

/** A rough budget in three steps, for a workbook that has a season already. */
export const StartPage = ({ report }: PageProps) => <StartForm report={report} />;
