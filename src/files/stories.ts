// Which files are stories, by their names.

export const STORY_NAME = /\.(?:md|markdown)$/i

/** Files that stand beside stories in a repository and are written for adults. */
const NOT_STORIES =
  /^(?:readme|changelog|licen[sc]e|contributing|code[-_]of[-_]conduct)(?:\.[\w-]+)*\.(?:md|markdown)$/i

/** @param name without its folder */
export const isForAdults = (name: string): boolean => NOT_STORIES.test(name)
