import { dirname } from "node:path";
import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { ENGINE_VERSION } from "../../engine/version.ts";

const root = dirname(fileURLToPath(import.meta.url));

/** Everything the app needs is precached, drawing exporters included: papers can be made without a network. */
export default defineConfig({
  root,
  define: { __ENGINE__: JSON.stringify(ENGINE_VERSION) },
  plugins: [
    react(),
    VitePWA({
      registerType: "prompt",
      injectRegister: false,
      manifest: {
        name: "Copperwright",
        short_name: "Copperwright",
        description: "From what is on the machine to a loom that is proven, built and tested.",
        display: "standalone",
        start_url: "/",
        background_color: "#FBFCF8",
        theme_color: "#EBDCB4",
        icons: [
          { src: "/mark.svg", sizes: "any", type: "image/svg+xml", purpose: "any" },
          { src: "/mark-192.png", sizes: "192x192", type: "image/png" },
          { src: "/mark-512.png", sizes: "512x512", type: "image/png" },
        ],
      },
      workbox: {
        globPatterns: ["**/*.{js,css,html,svg,png,woff,woff2,ttf}"],
        maximumFileSizeToCacheInBytes: 8_000_000,
        navigateFallback: "/index.html",
        navigateFallbackDenylist: [/^\/api\//, /^\/authority\.crt$/],
      },
    }),
  ],
  // Their usual builds lean on Node's Buffer.
  resolve: {
    alias: {
      "csv-stringify/sync": "csv-stringify/browser/esm/sync",
      "csv-parse/sync": "csv-parse/browser/esm/sync",
    },
  },
  worker: { format: "es" },
  build: { target: "es2022", outDir: "dist", emptyOutDir: true, sourcemap: false },
});
