/** As much of fontkit's face as the tests use; the package ships no types. */
declare module 'fontkit' {
  interface Font {
    readonly unitsPerEm: number;
    layout(words: string): { readonly advanceWidth: number };
  }
  export function openSync(path: string): Font;
}
