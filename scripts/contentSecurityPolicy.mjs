/**
 * What the built page may do: run its own files and fetch from where it came, nothing else. No inline script or style,
 * no eval, no frame, no form; markup becomes elements only through Svelte's own policy, which makes them of templates
 * that are known when the page is built; the one worker is the page's own.
 */
const POLICY = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'font-src': "'self'",
  'img-src': "'self' data: blob:",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
  'require-trusted-types-for': "'script'",
  'trusted-types': 'svelte-trusted-html wellcut-worker',
};

export const contentSecurityPolicy = Object.entries(POLICY)
  .map(([directive, sources]) => `${directive} ${sources}`)
  .join('; ');

/** Ships with the built page, before anything that it rules; the server for development puts styles in line. */
export function shipPolicy() {
  return {
    name: 'content-security-policy',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler: () => [
        {
          tag: 'meta',
          attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
          injectTo: 'head-prepend',
        },
      ],
    },
  };
}
