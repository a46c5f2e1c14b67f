// With FC_SEED set, property tests draw the same cases at every run; without it, new ones, and a failure prints its
// seed and path. Imported only when asked for, since every test file would pay for it.
const { FC_SEED } = process.env
if (FC_SEED) {
  const { default: fc } = await import('fast-check')
  fc.configureGlobal({ seed: Number(FC_SEED) })
}
