/** How a certificate authority is put on a device and taken away again, step by step. */
export interface PlatformGuide {
  readonly platform: string;
  readonly install: readonly string[];
  readonly remove: readonly string[];
}

const COMPARE =
  "Compare the SHA-256 fingerprint it shows with the one on the bench's own machine, letter by letter at least at both ends. Stop if they differ.";

/** Menus move between versions; the words to look for stay much the same. */
export const INSTALL_GUIDES: readonly PlatformGuide[] = [
  {
    platform: "iPhone and iPad",
    install: [
      "Open this page in Safari, tap the certificate and allow the download of the profile.",
      "Open Settings, tap Profile Downloaded (or General, VPN & Device Management), tap the profile, then More Details.",
      COMPARE,
      "Tap Install.",
      "In Settings, General, About, Certificate Trust Settings, switch on full trust for it.",
    ],
    remove: ["Settings, General, VPN & Device Management: tap the profile, then Remove Profile."],
  },
  {
    platform: "Android",
    install: [
      "Tap the certificate; it is saved with the downloads.",
      "Open Settings, look for Install a certificate (under Security, Encryption & credentials), choose CA certificate, then Install anyway, and pick the file.",
      "In the same place open Trusted credentials, User, and tap the new entry.",
      COMPARE,
    ],
    remove: [
      "Settings, Security, Encryption & credentials, Trusted credentials, User: tap the entry, then Remove.",
    ],
  },
  {
    platform: "Windows",
    install: [
      "Open the downloaded file; on the Details page look for the thumbprint, or run certutil -hashfile copperwright-authority.crt SHA256.",
      COMPARE,
      "Choose Install Certificate, Current User, place it in Trusted Root Certification Authorities.",
    ],
    remove: [
      "Run certmgr.msc; under Trusted Root Certification Authorities, Certificates, delete the entry.",
    ],
  },
  {
    platform: "macOS",
    install: [
      "Open the downloaded file; Keychain Access takes it into the login keychain.",
      "Open the entry there.",
      COMPARE,
      "Under Trust set Secure Sockets Layer (SSL) to Always Trust.",
    ],
    remove: ["In Keychain Access, login, Certificates: delete the entry."],
  },
  {
    platform: "Linux, and Firefox anywhere",
    install: [
      "In the browser's settings look for Certificates, then Authorities (Firefox: View Certificates), and import the downloaded file for websites only.",
      "View the imported entry.",
      COMPARE,
    ],
    remove: ["In the same list choose the entry and delete it."],
  },
];
