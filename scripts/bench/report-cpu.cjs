// Loaded before a program: tells on the third stream how much of the processor the process has used, all its threads together.

const { writeSync } = require('node:fs')

process.on('exit', () => {
  const { user, system } = process.cpuUsage()
  writeSync(3, String((user + system) / 1000))
})
