/** What we use of idb; the library's own types are not part of the build. */
import type { Database } from "../types.js";

export function openDB(
  name: string,
  version: number,
  on: { upgrade(database: Database, oldVersion: number): void; blocking(): void; terminated(): void },
): Promise<Database>;
