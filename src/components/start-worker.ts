/** What makes addresses of scripts that a page may start, in browsers that ask for it. */
interface ScriptAddresses {
  createPolicy(
    name: string,
    rules: { createScriptURL: (address: string) => string },
  ): { createScriptURL(address: string): string };
}

/** Starts a worker. Its address is the only one that its policy of trusted types lets pass. */
export function startWorker(address: string): Worker {
  return new Worker(trusted(address), { type: 'module' });
}

function trusted(only: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: ScriptAddresses };
  if (!trustedTypes) return only;
  const policy = trustedTypes.createPolicy('tap-and-sum-workers', {
    createScriptURL: (wanted) => {
      if (wanted === only) return wanted;
      throw new TypeError(`Expected the address ${only}, but got ${wanted}.`);
    },
  });
  return policy.createScriptURL(only);
}
