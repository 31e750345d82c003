/** The storage cannot be used, and a person has to do something about it. The message is for that person. */
export class StorageTrouble extends Error {
  override readonly name = "StorageTrouble";
}
