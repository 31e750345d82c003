/** Who asks, as the door found out: set on every request before anything else of the server sees it. */
export interface Visitor {
  /** Name written beside a revision. */
  readonly who: string;
  readonly device: string;
  /** `owner`: this machine, with the token of this start. Others were paired with the right they have. */
  readonly role: "owner" | "edit" | "view";
}
