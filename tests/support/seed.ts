import fc from 'fast-check'

// the same random cases in each run, so that what fails is the change; SEED=<whole number> tries others
fc.configureGlobal({ seed: Number(process.env.SEED ?? 20_261) })
