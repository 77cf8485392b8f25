import { Button, Dialog, DialogActions, DialogBody, DialogContent, DialogSurface, DialogTitle } from "@fluentui/react-components";

export type UnsavedDialogProps = {
  readonly name: string;
  readonly stay: () => void;
  readonly goOn: (saveFirst: boolean) => void;
};

/** Asked before another workbook takes the place of one with changes that no file has. */
export function UnsavedDialog({ name, stay, goOn }: UnsavedDialogProps) {
  return (
    <Dialog open modalType="alert" onOpenChange={(_event, { open }) => { if (!open) stay(); }}>
      <DialogSurface>
        <DialogBody>
          <DialogTitle>Save your changes?</DialogTitle>
          <DialogContent>{name} has changes that are only in this page. Opening another workbook loses them, unless you save first.</DialogContent>
          <DialogActions fluid>
            <Button appearance="primary" onClick={() => goOn(true)}>Save, then open</Button>
            <Button onClick={() => goOn(false)}>Open without saving</Button>
            <Button onClick={stay}>Stay here</Button>
          </DialogActions>
        </DialogBody>
      </DialogSurface>
    </Dialog>
  );
}
