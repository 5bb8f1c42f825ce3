// Writes src/api/schema.d.ts from the server's OpenAPI document: npm run schema -- path/to/openapi.json
import { createHash } from "node:crypto";
import { readFile, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import openapiTS, { astToString } from "openapi-typescript";

const given = process.argv[2];
if (!given) {
  console.error("Say which file holds the schema: npm run schema -- openapi.json");
  process.exit(2);
}
const digest = (text) => createHash("sha256").update(text).digest("hex");
const target = fileURLToPath(new URL("../src/api/schema.d.ts", import.meta.url));
const document = await readFile(given, "utf8");
const types = astToString(await openapiTS(JSON.parse(document), { alphabetize: true }));
// By these two a test knows that the types are of the server's document as it is, and as they were written.
const head = `// Generated from the server's OpenAPI by \`npm run schema\`; never edited.\n// document ${digest(document)}\n// types ${digest(types)}\n`;
await writeFile(target, head + types);
