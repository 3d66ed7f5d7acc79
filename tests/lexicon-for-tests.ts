// The real engine for tests: what the package ships, opened once. Run `npm run compile` first.

export {
  loadLexicon as testLexicon,
  loadPhonics as testPhonics,
  loadSpelling as testSpelling,
} from '../src/packaged/data.ts'
