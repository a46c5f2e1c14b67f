// Started by browser.mjs in a process of its own: the package reads its target folder from the environment.
import chromium from '@sparticuz/chromium'

await chromium.executablePath()
