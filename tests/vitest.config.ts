import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    dir: 'tests',
    setupFiles: ['tests/support/seed.ts'],
    maxWorkers: 2,
    // a machine may be busy with other things
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
})
