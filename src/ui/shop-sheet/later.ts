import { wakeLater } from '../bench/later'

wakeLater('shop-sheet', () => import('./wake'))
