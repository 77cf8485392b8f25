import { Component, useState, type ReactNode } from "react";
import { Button } from "./parts/Button";
import { version } from "./version";

export type FaultBoundaryProps = { readonly children: ReactNode };

/** Shows a fault of ours in place of the pane, with what a report of it needs. Nothing is sent anywhere. */
export class FaultBoundary extends Component<FaultBoundaryProps, { readonly fault: { readonly error: unknown } | null }> {
  override state: { readonly fault: { readonly error: unknown } | null } = { fault: null };

  static getDerivedStateFromError(error: unknown) {
    return { fault: { error } };
  }

  override render() {
    const { fault } = this.state;
    if (fault === null) return this.props.children;
    return <FaultPage details={faultDetails(fault.error)} startAgain={() => this.setState({ fault: null })} />;
  }
}

/** The fault as text: version, message and where it happened. */
const faultDetails = (error: unknown): string =>
  `Pennyacre ${version}\n${error instanceof Error ? `${error.name}: ${error.message}\n${error.stack ?? ""}` : String(error)}`;

function FaultPage({ details, startAgain }: { readonly details: string; readonly startAgain: () => void }) {
  const [copied, setCopied] = useState("");
  const copy = () => {
    // Some Office panes refuse the clipboard; the text below can be copied by hand then.
    const writing = navigator.clipboard?.writeText(details) ?? Promise.reject(new Error("no clipboard"));
    writing.then(
      () => setCopied("Copied."),
      () => setCopied("The pane cannot reach the clipboard: select the text below and copy it."),
    );
  };
  return (
    <div className="pn-body" role="alert">
      <h1>Something went wrong in Pennyacre itself</h1>
      <p>
        It is not a fault of your entries, and they are as you typed them. Start the pane again; if this comes back, report it with the
        details below.
      </p>
      <p className="pn-buttons">
        <Button appearance="primary" onClick={startAgain}>
          Start the pane again
        </Button>
        <Button onClick={copy}>Copy details</Button>
      </p>
      <p>{copied}</p>
      <pre className="pn-details" tabIndex={0} aria-label="Details">
        {details}
      </pre>
    </div>
  );
}
