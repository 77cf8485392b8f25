import { Component, type ReactNode } from "react";
import { showStartupFault } from "./startupFault";

type FaultBoundaryProps = { readonly children: ReactNode };

/** Shows a fault of ours that nothing nearer has caught, instead of a blank page. The browser's console has it too. */
export class FaultBoundary extends Component<FaultBoundaryProps, { readonly fault: unknown }> {
  override state = { fault: undefined as unknown };

  static getDerivedStateFromError(fault: unknown) {
    return { fault: fault ?? "unknown" };
  }

  override render() {
    if (this.state.fault === undefined) return this.props.children;
    return <div ref={(element) => { if (element !== null) showStartupFault(element, this.state.fault); }} />;
  }
}
