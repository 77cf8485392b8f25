import { Button } from "@fluentui/react-components";
import { useEffect, useRef } from "react";

export type UnsavedDialogProps = { readonly name: string; readonly stay: () => void; readonly goOn: (saveFirst: boolean) => void };

/**
 * Asked before another workbook takes the place of one with changes that no file has. The browser's own dialog: it keeps the
 * rest of the page out of reach only for as long as it is open.
 */
export function UnsavedDialog({ name, stay, goOn }: UnsavedDialogProps) {
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
      <h2 id="unsaved-title">Save your changes?</h2>
      <p id="unsaved-words">{name} has changes that are only in this page. Opening another workbook loses them, unless you save first.</p>
      <div className="answers">
        <Button appearance="primary" onClick={() => goOn(true)}>
          Save, then open
        </Button>
        <Button onClick={() => goOn(false)}>Open without saving</Button>
        <Button onClick={stay}>Stay here</Button>
      </div>
    </dialog>
  );
}
