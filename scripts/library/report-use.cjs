// Loaded before a program: tells on the third stream what the process used, when it ends: milliseconds of the processor, all
// its threads together, and bytes of memory at the most.

const { writeSync } = require('node:fs')

process.on('exit', () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage()
  writeSync(3, JSON.stringify({ cpu: (userCPUTime + systemCPUTime) / 1000, memory: maxRSS * 1024 }))
})
