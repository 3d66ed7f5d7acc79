// svg-to-pdfkit ships no types.

declare module 'svg-to-pdfkit' {
  interface Options {
    readonly width: number
    readonly height: number
    readonly assumePt: boolean
    readonly preserveAspectRatio?: string
    readonly imageCallback: (link: string) => string
    readonly documentCallback: (link: string) => undefined
    readonly fontCallback: () => string
    readonly warningCallback: (warning: string) => void
  }

  export default function draw(document: PDFKit.PDFDocument, svg: string, x: number, y: number, options: Options): void
}
