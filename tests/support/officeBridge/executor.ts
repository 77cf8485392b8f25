/** Carries out one batch of the library over a workbook: the paths to objects, then the actions on them, in order. */
import { HostRefusal } from "./hostRefusal";
import { Collection } from "./shared";
import type { WorkbookObject } from "./workbookObjects";

type Path = { Id: number; ObjectPathType: number; Name: string; ParentObjectPathId?: number; ArgumentInfo?: Arguments };
type Arguments = { Arguments?: unknown[]; ReferencedObjectPathIds?: unknown[] };
type Action = {
  Id: number;
  ActionType: number;
  Name: string;
  ObjectPathId: number;
  ArgumentInfo?: Arguments;
  QueryInfo?: { Select?: string[] };
};
export type Batch = { Actions: Action[]; ObjectPaths: Record<string, Path> };
export type Answer = { Results: { ActionId: number; Value: unknown }[]; Error?: Record<string, unknown> };

/** The answer, and the members that were used, as `Table.Name` or, where they were set, `Table.Name=`. */
export type Carried = { readonly answer: Answer; readonly members: readonly string[] };

/** Where a batch is to be cut: so many actions are carried out, the next is refused. */
export type Cut = { readonly after: number; readonly refusal: HostRefusal };

/** Carries out a batch as far as it goes; the first refusal ends it, and what came before stays done, as in Excel. */
export function carryOut(batch: Batch, workbook: WorkbookObject, cut: Cut | null = null): Carried {
  const objects = new Objects(batch.ObjectPaths, workbook);
  const answer: Answer = { Results: [] };
  batch.Actions.every((action, index) => {
    try {
      if (cut !== null && index === cut.after) throw cut.refusal;
      answer.Results.push({ ActionId: action.Id, Value: objects.act(action) ?? null });
      return true;
    } catch (error) {
      if (!(error instanceof HostRefusal)) throw error;
      answer.Error = { Code: error.code, Message: error.message, Location: "", HttpStatusCode: 400, ActionIndex: index };
      return false;
    }
  });
  return { answer, members: objects.members };
}

class Objects {
  readonly members: string[] = [];
  /** The path of a method is followed once in a batch. */
  private readonly followed = new Map<number, object | null>();
  constructor(
    private readonly paths: Record<string, Path>,
    private readonly workbook: WorkbookObject,
  ) {}

  act({ ActionType, Name, ObjectPathId, ArgumentInfo, QueryInfo }: Action): unknown {
    if (ActionType === 5) return null; // a marker of the library's own
    const object = this.follow(ObjectPathId);
    if (object === null) return null;
    switch (ActionType) {
      case 1:
        return identity(object);
      case 2:
        return this.query(object, QueryInfo?.Select);
      case 3:
        return this.call(object, Name, ArgumentInfo);
      case 4:
        return this.set(object, Name, this.given(ArgumentInfo)[0]);
      default:
        throw new HostRefusal("NotImplemented", `Action ${ActionType} is not known here`);
    }
  }

  private follow(id: number): object | null {
    if (!this.followed.has(id)) this.followed.set(id, this.find(this.paths[String(id)] as Path));
    return this.followed.get(id) ?? null;
  }

  private find({ ObjectPathType, Name, ParentObjectPathId, ArgumentInfo }: Path): object | null {
    if (ObjectPathType === 1) return this.workbook;
    if (ObjectPathType === 6) return this.workbook.kept(Name);
    // A service of the library's own, such as it asks for as it starts in a whole page: answered with nothing.
    if (ObjectPathType === 2) return null;
    const parent = this.follow(ParentObjectPathId as number);
    if (parent === null) return null;
    switch (ObjectPathType) {
      case 3:
        return this.call(parent, Name, ArgumentInfo) as object | null;
      case 4:
        return this.get(parent, Name) as object;
      case 5:
        return this.call(parent, "indexer", ArgumentInfo) as object;
      default:
        throw new HostRefusal("NotImplemented", `Path ${ObjectPathType} is not known here`);
    }
  }

  private given(info: Arguments = {}): unknown[] {
    return (info.Arguments ?? []).map((argument, index) => {
      const id = info.ReferencedObjectPathIds?.[index];
      return typeof id === "number" && id > 0 ? this.follow(id) : argument;
    });
  }

  private call(object: object, name: string, info?: Arguments): unknown {
    const method: unknown = this.member(object, name).value;
    if (typeof method !== "function") throw unknownMember(object, name);
    return method.apply(object, this.given(info)) as unknown;
  }
  private get(object: object, name: string): unknown {
    const getter = this.member(object, name).get;
    if (!getter) throw unknownMember(object, name);
    return getter.call(object) as unknown;
  }
  private set(object: object, name: string, value: unknown): void {
    const setter = this.member(object, name, "=").set;
    if (!setter) throw unknownMember(object, name);
    setter.call(object, value);
  }

  /** A member of the object's class, by the name in the request. */
  private member(object: object, name: string, use = ""): PropertyDescriptor {
    this.members.push(`${object.constructor.name}.${name}${use}`);
    for (let at: unknown = Object.getPrototypeOf(object); at !== Object.prototype && at !== null; at = Object.getPrototypeOf(at)) {
      const found = Object.getOwnPropertyDescriptor(at, name);
      if (found) return found;
    }
    throw unknownMember(object, name);
  }

  private query(object: object, select: readonly string[] | undefined): object {
    if (!select?.length) throw new HostRefusal("InvalidArgument", `${object.constructor.name} is loaded without naming what is wanted`);
    if (object instanceof Collection) return { _Items: object.items.map((item) => this.query(item as object, select)) };
    const answer: Record<string, unknown> = identity(object);
    for (const path of select) {
      const [first = "", ...rest] = path.split("/");
      const name = first.charAt(0).toUpperCase() + first.slice(1);
      const value = this.get(object, name);
      answer[name] = rest.length === 0 ? value : { ...(answer[name] as object), ...this.query(value as object, [rest.join("/")]) };
    }
    return answer;
  }
}

/** What the library must know of an object to find it again in a later batch. */
function identity(object: object): Record<string, unknown> {
  const { Id, _ReferenceId, _EventTargetId } = object as Record<string, unknown>;
  return {
    ...(Id !== undefined && { Id }),
    ...(_ReferenceId !== undefined && { _ReferenceId }),
    ...(_EventTargetId !== undefined && { _EventTargetId }),
  };
}

const unknownMember = (object: object, name: string) =>
  new HostRefusal("ApiNotFound", `${object.constructor.name}.${name} is not in the test workbook`);
