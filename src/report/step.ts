// How a step is named in a report.

/** A step that has no title of its own goes by its id, and that is said once. */
export const toStepName = ({ id, title }: { readonly id: string; readonly title: string }): string =>
  title === id ? id : `${id} (${title})`
