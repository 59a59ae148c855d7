/** The part of subset-font that is used; the package carries no types. */
declare module 'subset-font' {
  export default function subsetFont(
    font: Uint8Array,
    text: string,
    options: {
      readonly targetFormat: 'woff2';
      readonly noHinting: boolean;
      readonly keepFeatures: readonly string[];
    },
  ): Promise<Uint8Array>;
}
