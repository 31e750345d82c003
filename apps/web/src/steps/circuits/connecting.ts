import { create } from "zustand";

/** A wire being laid from pin to pin: first its one end is taken, then its other. */
interface Connecting {
  readonly from: string | null;
  readonly to: string | null;
  /** A hand is pulling a line across the diagram; slips stand aside. */
  readonly isPulling: boolean;
}

export const useConnecting = create<Connecting>()(() => ({
  from: null,
  to: null,
  isPulling: false,
}));

/** Takes a pin: the first time as one end, the second time as the other. */
export function takePin(pin: string): void {
  const { from } = useConnecting.getState();
  useConnecting.setState(
    from === null || from === pin ? { from: pin, to: null } : { from, to: pin },
  );
}

export function connectBoth(from: string, to: string): void {
  useConnecting.setState({ from, to });
}

export function stopConnecting(): void {
  useConnecting.setState({ from: null, to: null });
}

export function pulling(isPulling: boolean): void {
  useConnecting.setState({ isPulling });
}
