/**
 * Stands where Excel stands: takes the batches of the real Office library and answers them from a workbook in memory.
 * The library looks for `_richApiNativeBridge` when it is loaded; the shape of the messages was found by trial.
 */
import { carryOut, type Batch } from "./executor";
import { HostRefusal } from "./hostRefusal";
import { sheetChanged, tableChanged, type Watched } from "./shared";
import type { WorkbookModel } from "./workbookModel";
import { WorkbookObject } from "./workbookObjects";

type Message = { readonly id: number; readonly flags: number; readonly message: { readonly body: Batch } };

/** One batch as it went by. */
export type Trip = { readonly members: readonly string[]; readonly flags: number; readonly requestBytes: number; readonly answerBytes: number; readonly milliseconds: number };

/** Set in the flags of a batch that may wait until the user has left the cell being edited. */
export const waitsForCell = 64;
/** Set in the flags of a batch that may change the workbook. */
export const writes = 1;

export class Bridge {
  /** The library puts its receiver here. */
  onMessageFromHost: (message: string) => void = () => { throw new Error("The library has not been loaded"); };
  /** The round trips since they were last emptied. */
  readonly trips: Trip[] = [];
  /** Version of ExcelApi that this Excel says it has. */
  excelApi = "1.17";
  /** Largest answer in bytes, as on the web; no limit if it is not set. */
  answerLimit = Infinity;
  /** Whether a cell is being edited: batches that can wait do, others fail. */
  editing = false;
  /** Answers nothing at all any more, or nothing to a batch that writes. */
  silent = false;
  silentWhenWriting = false;
  /** Refuses the next batch with this. */
  refusesNext: HostRefusal | null = null;

  private workbook: WorkbookModel | null = null;
  private object: WorkbookObject | null = null;
  /** Kinds of events that the library asked for and has not given back. */
  readonly watched: Watched = new Set();
  private waiting: string[] = [];

  /** Puts another workbook behind the library, in an Excel that is up to date and idle. */
  open(workbook: WorkbookModel): void {
    this.watched.clear();
    this.workbook = workbook;
    this.object = new WorkbookObject(workbook, this.watched);
    workbook.changes.length = 0;
    this.trips.length = 0;
    this.waiting = [];
    Object.assign(this, { excelApi: "1.17", answerLimit: Infinity, editing: false, silent: false, silentWhenWriting: false, refusesNext: null });
  }

  sendMessageToHost = (text: string): void => {
    const message = JSON.parse(text) as Message;
    if (this.silent || (this.silentWhenWriting && message.flags & writes)) return;
    if (this.editing && message.flags & waitsForCell) this.waiting.push(text);
    else setTimeout(() => this.answer(message), 0);
  };

  /** The user leaves the cell: what waited goes on. */
  leaveCell(): void {
    this.editing = false;
    for (const text of this.waiting.splice(0)) this.sendMessageToHost(text);
  }

  private answer({ id, flags, message }: Message): void {
    const began = performance.now();
    const { members, text } = this.carried(message.body);
    this.trips.push({ members, flags, requestBytes: JSON.stringify(message.body).length, answerBytes: text.length, milliseconds: performance.now() - began });
    this.onMessageFromHost(JSON.stringify({ id, type: 2, message: { statusCode: 200, headers: {}, body: text } }));
    this.tellChanges("ThisLocalAddin");
  }

  private carried(body: Batch): { members: readonly string[]; text: string } {
    if (this.object === null) throw new Error("No workbook is open");
    const refused = this.editing ? new HostRefusal("InvalidOperationInCellEditMode", "Excel is in cell-editing mode.") : this.refusesNext;
    this.refusesNext = null;
    if (refused) return { members: [], text: refusal(refused) };
    const { answer, members } = carryOut(body, this.object);
    const text = JSON.stringify(answer);
    if (text.length <= this.answerLimit) return { members, text };
    return { members, text: refusal(new HostRefusal("ResponsePayloadSizeLimitExceeded", "The response payload size has exceeded the limit.")) };
  }

  /** Sends the events of what has changed since. */
  tellChanges(triggerSource: string): void {
    for (const { sheet, table } of this.workbook?.changes.splice(0) ?? []) {
      const event = { changeType: "RangeEdited", source: "Local", worksheetId: sheet.id, address: "A1", shiftDirection: "None", triggerSource };
      const inTable = table ?? this.workbook?.tables.find((each) => each.sheet === sheet);
      if (this.watched.has(sheetChanged)) this.tell(sheetChanged, event);
      if (inTable && this.watched.has(tableChanged)) this.tell(tableChanged, { ...event, tableId: inTable.id });
    }
  }

  private tell(messageType: number, event: object): void {
    const entry = { messageCategory: 65536, messageType, targetId: "Workbook", message: JSON.stringify(event), id: "" };
    this.onMessageFromHost(JSON.stringify({ type: 3, message: { entries: [entry] } }));
  }

  /** Whether this Excel has a requirement set. */
  isSetSupported = (name: string, version = "1.1"): boolean => {
    if (name === "DelayForCellEdit") return true;
    if (name !== "ExcelApi") return false;
    const [major = 0, minor = 0] = String(version).split(".").map(Number);
    const [hasMajor = 0, hasMinor = 0] = this.excelApi.split(".").map(Number);
    return major < hasMajor || (major === hasMajor && minor <= hasMinor);
  };
}

const refusal = ({ code, message }: HostRefusal) =>
  JSON.stringify({ Results: [], Error: { Code: code, Message: message, Location: "", HttpStatusCode: 400, ActionIndex: 0 } });
