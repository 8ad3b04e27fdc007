/** What we use of idb; the library's own types are not part of the build. */
import type { Database, Transaction } from "../types.js";

export function openDB(
  name: string,
  version: number | undefined,
  on: {
    upgrade(database: Database, oldVersion: number, newVersion: number | null, transaction: Transaction): void;
    blocking(): void;
    terminated(): void;
  },
): Promise<Database>;

/** The browser's own store behind one of idb's. */
export function unwrap(store: object): IDBObjectStore;
