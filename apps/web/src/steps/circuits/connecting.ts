import { create } from "zustand";

/** A wire being laid from pin to pin: first its one end is taken, then its other. */
interface Connecting {
  readonly from: string | null;
  readonly to: string | null;
}

export const useConnecting = create<Connecting>()(() => ({ from: null, to: null }));

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
