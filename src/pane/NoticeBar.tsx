import { Button } from "./parts/Button";
import type { Notice } from "./paneContext";

export type NoticeBarProps = { readonly notice: Notice | null; readonly dismiss: () => void };

/** What was just done or could not be done. The region is always there, so that what appears in it is announced. */
export function NoticeBar({ notice, dismiss }: NoticeBarProps) {
  return (
    <div className="pn-notices" aria-live="polite">
      {notice !== null && (
        <div className={`pn-notice pn-notice-${notice.tone}`}>
          <p>{notice.text}</p>
          <span className="pn-buttons">
            {notice.again && (
              <Button size="small" appearance="primary" onClick={notice.again}>
                Try again
              </Button>
            )}
            <Button size="small" onClick={dismiss}>
              Dismiss
            </Button>
          </span>
        </div>
      )}
    </div>
  );
}
