import { Button } from "@fluentui/react-components";
import { useEffect, useRef } from "react";

export type UnsavedDialogProps = {
  readonly name: string;
  /** Whether the workbook has changes that no file has. */
  readonly hasChanges: boolean;
  /** Whether a form beside it is filled in, which no saving keeps. */
  readonly isFormTyped: boolean;
  readonly stay: () => void;
  readonly goOn: (saveFirst: boolean) => void;
};

/**
 * Asked before another workbook takes the place of one with changes that no file has, or of what is typed beside it. The browser's
 * own dialog: it keeps the rest of the page out of reach only for as long as it is open.
 */
export function UnsavedDialog({ name, hasChanges, isFormTyped, stay, goOn }: UnsavedDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    dialog.current?.showModal();
    return () => {
      if (before instanceof HTMLElement && before.isConnected) before.focus({ preventScroll: true });
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      className="question"
      role="alertdialog"
      aria-labelledby="unsaved-title"
      aria-describedby="unsaved-words"
      onCancel={(event) => {
        event.preventDefault();
        stay();
      }}
    >
      <h2 id="unsaved-title">{hasChanges ? "Save your changes?" : "Leave what is typed?"}</h2>
      <p id="unsaved-words">
        {hasChanges && `${name} has changes that are only in this page. Opening another workbook loses them, unless you save first. `}
        {isFormTyped && "What is typed in the pane and not added yet is in no table: opening another workbook loses it."}
      </p>
      <div className="answers">
        {hasChanges && (
          <Button appearance="primary" onClick={() => goOn(true)}>
            Save, then open
          </Button>
        )}
        <Button onClick={() => goOn(false)}>{hasChanges ? "Open without saving" : "Open all the same"}</Button>
        <Button onClick={stay}>Stay here</Button>
      </div>
    </dialog>
  );
}
