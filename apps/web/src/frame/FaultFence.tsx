import { Component, type ReactNode } from "react";
import { faultText } from "../engine/faultText.ts";

/** A fault of ours stays on its sheet: the frame, the job and what was saved go on. */
export class FaultFence extends Component<{ children: ReactNode }, { message: string | null }> {
  override state: { message: string | null } = { message: null };

  static getDerivedStateFromError(error: unknown): { message: string } {
    return { message: faultText(error) };
  }

  override render(): ReactNode {
    const { message } = this.state;
    if (message === null) return this.props.children;
    return (
      <div className="fault" role="alert">
        <h2>This sheet could not be drawn.</h2>
        <p>Your job is kept. Choose another step, or try this one again.</p>
        <p className="note">{message}</p>
        <button
          type="button"
          className="act filled"
          onClick={() => this.setState({ message: null })}
        >
          try again
        </button>
      </div>
    );
  }
}
