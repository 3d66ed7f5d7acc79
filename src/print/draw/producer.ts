// The name that every file made here carries: by it a file of ours is told from somebody's own.

export const PRODUCER = 'Battledore'
