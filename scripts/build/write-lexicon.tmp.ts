import { mkdirSync, writeFileSync } from 'node:fs'
import { buildLexicon } from './lexicon.ts'
const t=Date.now()
const { bytes, report } = buildLexicon()
mkdirSync('dist',{recursive:true}); writeFileSync('dist/lexicon.bin', bytes)
const {residue, missed, ...rest}=report
console.log(Date.now()-t,'ms', bytes.length, rest); console.log('missed',missed.join(' ')); console.log('residue', residue.length, residue.slice(0,150).join(' | '))
