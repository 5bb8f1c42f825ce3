// Writes src/api/schema.d.ts from the server's OpenAPI document: npm run schema -- path/to/openapi.json
import { readFile, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import openapiTS, { astToString } from "openapi-typescript";

const given = process.argv[2];
if (!given) {
  console.error("Say which file holds the schema: npm run schema -- openapi.json");
  process.exit(2);
}
const target = fileURLToPath(new URL("../src/api/schema.d.ts", import.meta.url));
const tree = await openapiTS(JSON.parse(await readFile(given, "utf8")), { alphabetize: true });
await writeFile(target, "// Generated from the server's OpenAPI by `npm run schema`; never edited.\n" + astToString(tree));
