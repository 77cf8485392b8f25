import { Button, MessageBar, MessageBarActions, MessageBarBody } from "@fluentui/react-components";

/** Something about files that the user should know: what was opened or saved, or why not. */
export type NoticeText = { readonly intent: "info" | "success" | "error"; readonly text: string };

/** A message above the desk, which stays until it is put away. */
export function Notice({ intent, text, dismiss }: NoticeText & { readonly dismiss: () => void }) {
  return (
    <MessageBar intent={intent} layout="multiline">
      <MessageBarBody>{text}</MessageBarBody>
      <MessageBarActions containerAction={<Button size="small" appearance="transparent" onClick={dismiss}>Dismiss</Button>} />
    </MessageBar>
  );
}
