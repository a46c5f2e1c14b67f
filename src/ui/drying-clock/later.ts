import { wakeLater } from '../bench/later'

wakeLater('drying-clock', () => import('./wake'))
