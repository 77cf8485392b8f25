/**
 * Stands where Excel stands: takes the batches of the real Office library and answers them from a workbook in memory.
 * The library looks for `_richApiNativeBridge` when it is loaded; the shape of the messages was found by trial.
 */
import { carryOut, type Batch } from "./executor";
import { brokenAnswers, type Fault } from "./faults";
import { HostRefusal } from "./hostRefusal";
import { sheetChanged, tableChanged, type Watched } from "./shared";
import type { WorkbookModel } from "./workbookModel";
import { WorkbookObject } from "./workbookObjects";

type Message = { readonly id: number; readonly flags: number; readonly message: { readonly body: Batch } };

/** One batch as it went by. */
export type Trip = {
  readonly members: readonly string[];
  readonly flags: number;
  readonly actions: number;
  readonly requestBytes: number;
  readonly answerBytes: number;
  readonly milliseconds: number;
};

/** Set in the flags of a batch that may wait until the user has left the cell being edited. */
export const waitsForCell = 64;
/** Set in the flags of a batch that may change the workbook. */
export const writes = 1;

export class Bridge {
  /** The library puts its receiver here. */
  onMessageFromHost: (message: string) => void = () => {
    throw new Error("The library has not been loaded");
  };
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
  /** Whether this Excel says that its Undo takes back what an add-in wrote. */
  canUndo = true;
  /** Refuses the next batch with this. */
  refusesNext: HostRefusal | null = null;
  /** What goes wrong with a request; asked once for each, which are counted from 0 since the workbook was opened. */
  faultOf: (request: number, isWriting: boolean) => Fault | null = () => null;
  /** Requests since the workbook was opened. */
  requests = 0;

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
    Object.assign(this, {
      excelApi: "1.17",
      answerLimit: Infinity,
      editing: false,
      silent: false,
      silentWhenWriting: false,
      refusesNext: null,
      faultOf: () => null,
      requests: 0,
      canUndo: true,
    });
  }

  sendMessageToHost = (text: string): void => {
    const message = JSON.parse(text) as Message;
    if (this.silent || (this.silentWhenWriting && message.flags & writes)) return;
    if (this.editing && message.flags & waitsForCell) return void this.waiting.push(text);
    const fault = this.faultOf(this.requests++, (message.flags & writes) !== 0);
    const wait = fault?.how === "late" ? fault.milliseconds : 0;
    if (fault?.how !== "lost request") setTimeout(() => this.answer(message, fault), wait);
  };

  /** The user leaves the cell: what waited goes on. */
  leaveCell(): void {
    this.editing = false;
    for (const text of this.waiting.splice(0)) this.sendMessageToHost(text);
  }

  private answer({ id, flags, message }: Message, fault: Fault | null): void {
    const began = performance.now();
    const { members, text } = this.carried(message.body, fault);
    this.trips.push({
      members,
      flags,
      actions: message.body.Actions.length,
      requestBytes: JSON.stringify(message.body).length,
      answerBytes: text.length,
      milliseconds: performance.now() - began,
    });
    const [statusCode, body] = brokenAnswers[fault?.how ?? "refused"] ?? [200, text];
    const answer = JSON.stringify({ id, type: 2, message: { statusCode, headers: {}, body } });
    if (fault?.how !== "lost answer") this.onMessageFromHost(answer);
    if (fault?.how === "answered twice") this.onMessageFromHost(answer);
    this.tellChanges("ThisLocalAddin");
  }

  private carried(body: Batch, fault: Fault | null): { members: readonly string[]; text: string } {
    if (this.object === null) throw new Error("No workbook is open");
    const asked = fault?.how === "refused" ? new HostRefusal(fault.code, "as Excel says it") : this.refusesNext;
    const refused = this.editing ? new HostRefusal("InvalidOperationInCellEditMode", "Excel is in cell-editing mode.") : asked;
    this.refusesNext = null;
    if (refused) return { members: [], text: refusal(refused) };
    const cut =
      fault?.how === "cut"
        ? { after: fault.after, refusal: new HostRefusal(fault.code ?? "GeneralException", "There was an internal error.") }
        : null;
    const { answer, members } = carryOut(body, this.object, cut);
    const text = JSON.stringify(answer);
    if (text.length <= this.answerLimit) return { members, text };
    return {
      members,
      text: refusal(new HostRefusal("ResponsePayloadSizeLimitExceeded", "The response payload size has exceeded the limit.")),
    };
  }

  /** Sends the events of what has changed since. */
  tellChanges(triggerSource: string): void {
    for (const { sheet, table } of this.workbook?.changes.splice(0) ?? []) {
      const event = {
        changeType: "RangeEdited",
        source: "Local",
        worksheetId: sheet.id,
        address: "A1",
        shiftDirection: "None",
        triggerSource,
      };
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
    if (name === "ExcelUndoApiAll") return this.canUndo;
    if (name !== "ExcelApi") return false;
    const [major = 0, minor = 0] = String(version).split(".").map(Number);
    const [hasMajor = 0, hasMinor = 0] = this.excelApi.split(".").map(Number);
    return major < hasMajor || (major === hasMajor && minor <= hasMinor);
  };
}

const refusal = ({ code, message }: HostRefusal) =>
  JSON.stringify({ Results: [], Error: { Code: code, Message: message, Location: "", HttpStatusCode: 400, ActionIndex: 0 } });
