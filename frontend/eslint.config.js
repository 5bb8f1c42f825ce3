import hooks from "eslint-plugin-react-hooks";
import tseslint from "typescript-eslint";

/** One folder, and the folders it must not reach up to. */
const closed = (folder, ...others) => ({
  files: [`src/${folder}/**/*.{ts,tsx}`],
  rules: {
    "no-restricted-imports": [
      "error",
      {
        patterns: [
          {
            group: others.flatMap((other) => [`**/${other}/**`, `**/${other}`]),
            message: `${folder} may not import from there: shell > features > offline > api > domain; ui stands alone.`,
          },
        ],
      },
    ],
  },
});

export default tseslint.config(
  { ignores: ["dist/", "node_modules/", "src/api/schema.d.ts"] },
  ...tseslint.configs.strict,
  {
    files: ["src/**/*.{ts,tsx}"],
    languageOptions: { parserOptions: { project: ["./tsconfig.json", "./tsconfig.sw.json"] } },
    plugins: { "react-hooks": hooks },
    rules: {
      "@typescript-eslint/no-floating-promises": "error",
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
      "react-hooks/rules-of-hooks": "error",
      "react-hooks/exhaustive-deps": "error",
      "max-lines": ["error", 300],
    },
  },
  closed("domain", "api", "offline", "features", "shell", "ui", "sw"),
  closed("api", "offline", "features", "shell", "ui", "sw"),
  closed("offline", "features", "shell", "ui", "sw"),
  closed("ui", "domain", "api", "offline", "features", "shell", "sw"),
  closed("features", "shell", "sw"),
  closed("sw", "domain", "api", "offline", "features", "shell", "ui"),
);
