/** What a page of the bench may load and do: its own files, and nothing from elsewhere. */
const CONTENT_POLICY = [
  "default-src 'none'",
  // The engine's number loops are WebAssembly.
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "font-src 'self'",
  "frame-ancestors 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/** On every answer, whatever it is. */
export const SAFE_HEADERS: Readonly<Record<string, string>> = {
  "content-security-policy": CONTENT_POLICY,
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "x-frame-options": "DENY",
  "permissions-policy": "geolocation=(), microphone=(), payment=(), usb=()",
};
