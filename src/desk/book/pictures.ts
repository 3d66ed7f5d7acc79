// The drawings of a book as addresses for <img>, where no drawing can run or load anything.

import { useEffect, useState } from 'preact/hooks'
import type { Book } from '../core/questions.ts'

/** One for each page; the old ones are given back when there are new ones. */
export function usePictures({ pages }: Pick<Book, 'pages'>): readonly string[] {
  const [addresses, setAddresses] = useState<readonly string[]>([])
  useEffect(() => {
    const made = pages.map((svg) => URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' })))
    setAddresses(made)
    return () => {
      for (const address of made) URL.revokeObjectURL(address)
    }
  }, [pages])
  return addresses
}
