import { defineConfig } from 'vite'
import { VitePWA } from 'vite-plugin-pwa'

export default defineConfig({
  root: 'src/web',
  publicDir: 'sw/public',
  build: { outDir: '../../dist/web', emptyOutDir: true, target: 'es2022', modulePreload: { polyfill: false } },
  worker: { format: 'es' },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  plugins: [
    VitePWA({
      strategies: 'injectManifest',
      srcDir: 'sw',
      filename: 'sw.ts',
      // The page registers it itself, and a new version waits until it is told to take over.
      registerType: 'prompt',
      injectRegister: false,
      includeManifestIcons: false,
      injectManifest: { globPatterns: ['**/*.{html,js,css,svg,png,webmanifest}'] },
      manifest: {
        name: 'Lapwise',
        short_name: 'Lapwise',
        description: 'From site and hardware sheets to a judged guardrail installation',
        id: '/',
        start_url: '/',
        scope: '/',
        display: 'standalone',
        background_color: '#eceae3',
        theme_color: '#123f73',
        icons: [
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
        ],
      },
    }),
  ],
})
