import fc from 'fast-check';

// What fails must fail again, and what landed must not fail by chance elsewhere; `npm run fuzz` tries other cases each time.
if (!process.env.FUZZ_CASES) fc.configureGlobal({ seed: 20_260_101 });
