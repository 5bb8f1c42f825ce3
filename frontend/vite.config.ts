import { defineConfig } from "vitest/config";

export default defineConfig({
  build: { target: "es2022", outDir: "dist", emptyOutDir: true, assetsInlineLimit: 0 },
  server: { proxy: { "/api": "http://127.0.0.1:8000" } },
  preview: { proxy: { "/api": process.env["NATCH_API"] ?? "http://127.0.0.1:8000" } },
  test: {
    include: ["src/**/*.test.{ts,tsx}"],
    environment: "node",
    restoreMocks: true,
    // A busy machine is no fault: longer than the longest wait inside a test.
    testTimeout: 20_000,
    env: { TZ: "UTC" },
  },
});
