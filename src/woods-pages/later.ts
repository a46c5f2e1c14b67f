import { wakeLater } from '../ui/bench/later'

wakeLater('woods-compare', () => import('./wake'))
