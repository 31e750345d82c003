/** Everything the door and sharing say when they refuse: what happened, and what to do. The code is for programs. */
export const REFUSALS = {
  "wrong-host": {
    status: 421,
    message:
      "This request names another machine than the bench. Type the address exactly as the bench printed it.",
  },
  "wrong-target": {
    status: 400,
    message: "The bench answers paths of its own only. Load the page again.",
  },
  "wrong-method": {
    status: 405,
    message: "The bench is asked with GET and changed with POST; this was neither.",
  },
  "wrong-origin": {
    status: 403,
    message:
      "This change comes from a page that is not the bench's own, and nothing was done. Work in the bench's own page.",
  },
  "not-json": {
    status: 415,
    message: "A change has to be sent as JSON. Load the page again; it may be an old one.",
  },
  "no-mark": {
    status: 403,
    message:
      "A change has to carry the header x-copperwright, and nothing was done. Load the page again; it may be an old one.",
  },
  "too-large": {
    status: 413,
    message: "That is larger than the bench takes in one piece. Send less at a time.",
  },
  unreadable: {
    status: 400,
    message: "The request could not be read, and nothing was done. Load the page again.",
  },
  "not-found": { status: 404, message: "There is nothing at this address. Go back to the jobs." },
  "no-session": {
    status: 401,
    message: "This device is not known to the bench.",
  },
  "wrong-token": {
    status: 403,
    message:
      "The key in the address is not the one of this start. Open the address the bench printed last.",
  },
  "not-here": {
    status: 403,
    message: "This is done on the bench's own machine only.",
  },
  "pair-elsewhere": {
    status: 403,
    message:
      "Pairing is for other devices. On this machine open the address that copperwright open printed; it carries the key.",
  },
  "no-code": {
    status: 403,
    message:
      "No code is waiting: it was used, its two minutes are over, or it was tried too often. Have a new one shown on the bench's own machine.",
  },
  "wrong-code": {
    status: 403,
    message: "That is not the code. Compare it with the one shown on the bench's own machine.",
  },
  "device-name": {
    status: 400,
    message: "Give the device a name of 1 to 40 letters, so that it can be told from others.",
  },
  "device-name-taken": {
    status: 409,
    message: "Another device has that name, or it is the owner's. Give this one a name of its own.",
  },
  "too-many-devices": {
    status: 409,
    message: "So many devices are paired that no more fit. Send some away first.",
  },
  "no-device": { status: 404, message: "There is no such device; it may have been sent away." },
  "role-owner": {
    status: 403,
    message: "Only the bench's own machine may do this.",
  },
  "role-view": {
    status: 403,
    message:
      "This device may look and hunt faults, not change. Pair it again with a code that lets it edit.",
  },
  "only-ticks": {
    status: 403,
    message:
      "Over this plain connection a device may look, tick and note readings, and nothing else. Use the secure address; the bench's owner can set it up under Other devices.",
  },
  "no-network": {
    status: 409,
    message:
      "This machine has no address on a network just now. Join the workshop's network first.",
  },
  "wrong-address": {
    status: 400,
    message: "This machine does not have that address. Choose one of those it has.",
  },
  "port-taken": {
    status: 409,
    message:
      "Another program uses the port the bench would share at. Close it, or open the bench with another --port.",
  },
  "no-authority": {
    status: 409,
    message: "There is no certificate authority yet. Have the bench make one first.",
  },
  "no-shop-certificate": {
    status: 409,
    message:
      "The shop's certificate is not there. Put it into the data folder as door/certificate.pem and its key as door/certificate-key.pem.",
  },
  "bad-shop-certificate": {
    status: 409,
    message:
      "The shop's certificate cannot be used: it has run out, names no host, or its key belongs to another. Put a valid pair into the data folder.",
  },
  "wrong-setting": {
    status: 400,
    message: "Sharing is on or off, with TLS none, own-authority or shop; this was something else.",
  },
  fault: {
    status: 500,
    message:
      "The bench made a fault of its own, and nothing was saved. Its window says more; try again.",
  },
} as const;

export type RefusalCode = keyof typeof REFUSALS;

/** Said to a device on the plain door, beside what it sees. */
export const WHY_LIMITED =
  "This page came over a plain connection that others on the network can read and alter. Here this device may look and tick while it is connected; it cannot edit, be installed, or work without the network. The bench's owner can set up the secure address under Other devices.";
