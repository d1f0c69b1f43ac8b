import { Workbox } from 'workbox-window';

/** The script that keeps the page, by the one name that the page's policy lets be run. */
export function worker(): Workbox {
  const { trustedTypes } = window as { trustedTypes?: PolicyMaker };
  const address = new URL('sw.js', document.baseURI).href;
  if (trustedTypes === undefined) return new Workbox(address);
  const policy = trustedTypes.createPolicy('wellcut-worker', { createScriptURL: () => address });
  return new Workbox(policy.createScriptURL(''));
}

/** Trusted Types (W3C working draft), section 2.3, as far as it is used here. */
interface PolicyMaker {
  createPolicy(
    name: string,
    rules: { createScriptURL: () => string },
  ): { createScriptURL(input: string): ConstructorParameters<typeof Workbox>[0] };
}
