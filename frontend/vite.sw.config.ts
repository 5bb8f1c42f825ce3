import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { defineConfig } from "vite";

const DIST = join(import.meta.dirname, "dist");

/** The files of the built shell as the browser asks for them; the worker itself is never among them. */
function shellFiles(): string[] {
  return readdirSync(DIST, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !/^sw\.js|\.(br|gz|map|txt)$/.test(entry.name))
    .map((entry) => relative(DIST, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();
}

/** A digest of what the shell holds, so that a changed file makes a new cache. */
function digestOf(files: string[]): string {
  const digest = createHash("sha256");
  for (const file of files) digest.update(file).update(readFileSync(join(DIST, file)));
  return digest.digest("hex").slice(0, 12);
}

const files = shellFiles();

export default defineConfig({
  define: {
    __SHELL_FILES__: JSON.stringify(files.map((file) => (file === "index.html" ? "/" : `/${file}`))),
    __SHELL_VERSION__: JSON.stringify(digestOf(files)),
  },
  publicDir: false,
  build: {
    target: "es2022",
    outDir: "dist",
    emptyOutDir: false,
    lib: { entry: "src/sw/sw.ts", formats: ["iife"], name: "natchWorker", fileName: () => "sw.js" },
  },
});
