type Runner = InstanceType<typeof import('./runner.ts').Runner>;

/** What Stryker starts in a process of its own. It goes to its copy of the project after this file is loaded, so the rest is loaded later. */
function start() {
  let runner: Runner | undefined;
  const started = (): Runner => {
    if (!runner) throw new Error('the runner is asked before it is begun');
    return runner;
  };
  return {
    capabilities: () => ({ reloadEnvironment: true }),
    init: async (): Promise<void> => {
      const { Runner } = await import('./runner.ts');
      runner = new Runner();
      await runner.init();
    },
    dryRun: (asked: Parameters<Runner['dryRun']>[0]) => started().dryRun(asked),
    mutantRun: (asked: Parameters<Runner['mutantRun']>[0]) => started().mutantRun(asked),
  };
}
start.inject = [] as const;

export const strykerPlugins = [{ kind: 'TestRunner', name: 'in-memory', factory: start }];
