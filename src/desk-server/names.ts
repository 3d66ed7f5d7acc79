// Which names of files the desk may ask for: none that leads out of the folder, none that is hidden, none that is neither
// story nor settings nor picture.

export type Sort = 'story' | 'yaml' | 'picture'

const SORTS: Readonly<Record<string, Sort>> = {
  jpeg: 'picture',
  jpg: 'picture',
  markdown: 'story',
  md: 'story',
  png: 'picture',
  svg: 'picture',
  yaml: 'yaml',
  yml: 'yaml',
}

/** The one hidden file that says what holds for stories; it is read, and never written. */
const HIDDEN_SETTINGS = '.battledore.yaml'

/** What Windows takes for a device, whatever stands behind the dot. */
const DEVICE = /^(?:aux|con|nul|prn|com\d|lpt\d)(?:\.|$)/i

/** Undefined for a name that may not be asked for, or not be written. */
export function toSort(name: string, isWritten = false): Sort | undefined {
  if (name.length > 1000 || /[\\:*?"<>|]|\p{Cc}/u.test(name)) return undefined
  const parts = name.split('/')
  const last = parts.at(-1) ?? ''
  if (parts.some((part) => !isAllowed(part) && !(part === last && part === HIDDEN_SETTINGS && !isWritten)))
    return undefined
  const sort = SORTS[/\.([a-z]+)$/i.exec(last)?.[1]?.toLowerCase() ?? '']
  return isWritten && sort === 'picture' ? undefined : sort
}

/** `..` begins with a dot too; a dot or a space at the end is dropped by Windows, and the name would be another one. */
const isAllowed = (part: string): boolean =>
  /^[^.].*[^. ]$|^[^. ]$/su.test(part) && !DEVICE.test(part) && part !== 'node_modules'
