import type { Page } from "playwright-core";
import { expect } from "vitest";

/** What is read until it is as expected, or for 20 s. */
export const soon = <T>(read: () => Promise<T>) => expect.poll(read, { timeout: 20_000 });

/** What undo would take back, in words. */
export const undoWords = (page: Page): Promise<string> =>
  page.locator(".sum-undo .note").innerText();
