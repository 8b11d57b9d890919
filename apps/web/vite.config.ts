import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/** The solver's WebAssembly is 3.5 MB and must be there with the network off. */
const LARGEST_PRECACHED_BYTES = 6 * 1024 * 1024;

export default defineConfig({
  // Relative, so that the folder runs at any address of any host.
  base: './',
  plugins: [
    react(),
    VitePWA({
      strategies: 'generateSW',
      // A waiting version is offered in a quiet line; the page is never reloaded under someone's hands.
      registerType: 'prompt',
      injectRegister: false,
      includeAssets: ['icon.svg', 'icon-180.png', 'icon-192.png', 'icon-512.png'],
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,png,woff2,wasm,webmanifest}'],
        maximumFileSizeToCacheInBytes: LARGEST_PRECACHED_BYTES,
        navigateFallback: 'index.html',
        // Pages of the server's own, not of the app.
        navigateFallbackDenylist: [/\/(?:api|trust)(?:\/|$)/u],
        cleanupOutdatedCaches: true,
      },
      manifest: {
        name: 'Loamwright',
        short_name: 'Loamwright',
        description: 'Mixes, build cards, readings and a daybook for growers who make their own fertility.',
        lang: 'en',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#f6f0e3',
        theme_color: '#f6f0e3',
        icons: [
          { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
      },
    }),
  ],
  // The solver asks for these only where it runs in Node.
  worker: { format: 'es', rolldownOptions: { external: [/^node:/u] } },
  optimizeDeps: { exclude: ['highs'] },
  build: { manifest: true, assetsInlineLimit: 0 },
});
