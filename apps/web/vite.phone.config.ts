import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/**
 * The crews' phones are a program of their own below /phone/, built apart from the office: the service worker keeps exactly
 * these files, and has no say over the office's pages.
 */
export default defineConfig({
  root: import.meta.dirname,
  base: '/phone/',
  publicDir: 'src/phone/public',
  plugins: [
    react(),
    VitePWA({
      strategies: 'generateSW',
      // A newer program waits until the phone's pages are closed: nothing changes under a hand.
      registerType: 'prompt',
      injectRegister: null,
      manifestFilename: 'manifest.webmanifest',
      manifest: {
        name: 'Drumline phone',
        short_name: 'Drumline',
        description: 'Your flights and your reports, with and without a signal. For use on the ground.',
        start_url: '/phone/',
        scope: '/phone/',
        display: 'standalone',
        background_color: '#ffffff',
        theme_color: '#16202a',
        icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,woff2}'],
        navigateFallback: '/phone/phone.html',
        clientsClaim: true,
        inlineWorkboxRuntime: true,
        sourcemap: false,
      },
    }),
  ],
  resolve: { conditions: ['source', 'module', 'browser', 'development|production'] },
  build: {
    target: 'es2023',
    modulePreload: { polyfill: false },
    outDir: 'dist/phone',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    // However many parts: a phone keeps all of them for where there is no line.
    chunkSizeWarningLimit: 700,
    rolldownOptions: { input: 'phone.html' },
  },
});
