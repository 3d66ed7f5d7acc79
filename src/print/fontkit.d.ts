// The part of fontkit that is used here: it ships no types.

declare module 'fontkit' {
  export interface Glyph {
    readonly id: number
    readonly advanceWidth: number
    readonly bbox: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number }
    readonly path: { toSVG(): string }
  }

  export interface Font {
    readonly familyName: string | null
    readonly unitsPerEm: number
    readonly name: { readonly records: Readonly<Record<string, Readonly<Record<string, string>> | undefined>> }
    readonly availableFeatures: readonly string[]
    readonly directory: { readonly tables: Readonly<Record<string, unknown>> }
    glyphForCodePoint(codePoint: number): Glyph
    hasGlyphForCodePoint(codePoint: number): boolean
    layout(
      text: string,
      features?: Readonly<Record<string, boolean>>,
    ): {
      readonly glyphs: readonly Glyph[]
      readonly positions: readonly { readonly xAdvance: number; readonly xOffset: number; readonly yOffset: number }[]
      readonly advanceWidth: number
    }
  }

  export function create(bytes: Uint8Array): Font
}
