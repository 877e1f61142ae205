import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  // Relative addresses, so that the built folder works from any path or disk.
  base: './',
  plugins: [react()],
  // Uncompressed kilobytes; what counts is measured compressed by `npm run bench size`.
  build: { chunkSizeWarningLimit: 1500 },
  server: { port: 5170 },
  preview: { port: 5171 },
});
