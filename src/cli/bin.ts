// The executable, from the sources. The compiled one is launch.ts.

import { start } from './start.ts'

void start()
