// Shares as they stand in the table.

export const toPercent = (share: number, digits = 1): string => `${(share * 100).toFixed(digits)} %`
