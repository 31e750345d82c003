declare module "dxf-writer/src/Handle.js" {
  /** Counter the library numbers its entities with; shared by all drawings of a process. */
  const Handle: { seed: number };
  export default Handle;
}
