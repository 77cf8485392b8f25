import { Button, MessageBar, MessageBarActions, MessageBarBody } from "@fluentui/react-components";

/** Something about files that the user should know: what was opened or saved, or why not. */
export type NoticeText = {
  readonly intent: "info" | "success" | "warning" | "error";
  readonly text: string;
  /** What can be done about it. */
  readonly answers?: readonly { readonly label: string; readonly choose: () => void }[];
};

/** A message above the desk, which stays until it is put away. */
export function Notice({ intent, text, answers = [], dismiss }: NoticeText & { readonly dismiss: () => void }) {
  return (
    <MessageBar intent={intent} layout="multiline">
      <MessageBarBody>{text}</MessageBarBody>
      <MessageBarActions
        containerAction={
          <Button size="small" appearance="transparent" onClick={dismiss}>
            Dismiss
          </Button>
        }
      >
        {answers.map(({ label, choose }) => (
          <Button key={label} size="small" onClick={choose}>
            {label}
          </Button>
        ))}
      </MessageBarActions>
    </MessageBar>
  );
}
