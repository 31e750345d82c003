import { type ReactNode, useEffect } from "react";

/** While it is on screen, the browser's own print command prints the drawing beside it on a page of exactly its size. */
export function PrintedPage({
  widthMm,
  heightMm,
}: {
  widthMm: number;
  heightMm: number;
}): ReactNode {
  useEffect(() => {
    const rules = new CSSStyleSheet();
    rules.replaceSync(`@page { size: ${widthMm}mm ${heightMm}mm; margin: 0 }`);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, rules];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== rules);
    };
  }, [widthMm, heightMm]);
  return null;
}
