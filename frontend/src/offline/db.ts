/** What is kept on the phone: acts waiting to be heard, the drainer's lease, and small named things. */

const NAME = "natch";
const VERSION = 1;

export type StoreName = "acts" | "lease" | "kept";

export function openDb(name = NAME): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const asked = indexedDB.open(name, VERSION);
    asked.onupgradeneeded = () => {
      asked.result.createObjectStore("acts", { keyPath: "order", autoIncrement: true }).createIndex("id", "id", { unique: true });
      asked.result.createObjectStore("lease");
      asked.result.createObjectStore("kept");
    };
    asked.onsuccess = () => {
      // Another tab with a newer version of the app must be able to change the tables.
      asked.result.onversionchange = () => {
        asked.result.close();
      };
      resolve(asked.result);
    };
    asked.onerror = () => {
      reject(asked.error ?? new Error("The phone keeps nothing."));
    };
  });
}

export function answered<Value>(asked: IDBRequest<Value>): Promise<Value> {
  return new Promise((resolve, reject) => {
    asked.onsuccess = () => {
      resolve(asked.result);
    };
    asked.onerror = () => {
      reject(asked.error ?? new Error("The phone did not keep it."));
    };
  });
}

/** Run `work` in one transaction, and resolve when what it wrote is on the disk. */
export async function inside<Value>(
  db: IDBDatabase,
  store: StoreName,
  mode: "readonly" | "readwrite",
  work: (table: IDBObjectStore) => Promise<Value>,
): Promise<Value> {
  // "strict": an act said to be kept must survive a flat battery a second later.
  const transaction = db.transaction(store, mode, { durability: store === "acts" ? "strict" : "relaxed" });
  const finished = new Promise<void>((resolve, reject) => {
    transaction.oncomplete = () => {
      resolve();
    };
    transaction.onerror = transaction.onabort = () => {
      reject(transaction.error ?? new Error("The phone did not keep it."));
    };
  });
  const [value] = await Promise.all([work(transaction.objectStore(store)), finished]);
  return value;
}

export async function readKept(db: IDBDatabase, key: string): Promise<unknown> {
  return inside(db, "kept", "readonly", (table) => answered<unknown>(table.get(key)));
}

export async function writeKept(db: IDBDatabase, key: string, value: unknown): Promise<void> {
  await inside(db, "kept", "readwrite", (table) => answered(table.put(value, key)));
}

export async function dropKept(db: IDBDatabase, key: string): Promise<void> {
  await inside(db, "kept", "readwrite", (table) => answered(table.delete(key)));
}
