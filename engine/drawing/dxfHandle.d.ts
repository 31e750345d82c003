declare module "dxf-writer/src/Handle.js" {
  /** Counter the library numbers its entities with; shared by all drawings it makes. */
  const Handle: { seed: number };
  export default Handle;
}
