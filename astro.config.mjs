import preact from '@astrojs/preact'
import sitemap from '@astrojs/sitemap'
import { defineConfig } from 'astro/config'
import { ownShop } from './.ci/own-shop.mjs'
import { basePath, dist } from './.ci/place.mjs'

export default defineConfig({
  output: 'static',
  // Without an address of its own the site names none: no canonical link, no sitemap, no picture for previews.
  ...(process.env.SITE_URL ? { site: process.env.SITE_URL } : {}),
  base: basePath(),
  outDir: dist,
  trailingSlash: 'always',
  integrations: [
    preact(),
    ...(process.env.SITE_URL ? [sitemap({ filter: (page) => !/\/(brief|invite|offline)\/$/.test(page) })] : [])
  ],
  // Highlighted code would need inline styles, which the policy below forbids.
  markdown: { syntaxHighlight: false },
  // What every live part needs, in one file: split by use it would pack worse, and the first view has a limit.
  vite: {
    plugins: [ownShop()],
    environments: {
      client: {
        build: {
          rolldownOptions: {
            output: {
              codeSplitting: {
                groups: [
                  {
                    name: 'core',
                    test: /node_modules\/preact\/|preload-helper|nanostores\/|stores\/(units|use-saved|saved)/
                  },
                  // Shared by the questions, the brief and the making of invites.
                  {
                    name: 'asking',
                    test: /src\/(ui\/questionnaire\/(Radio|Control|ChoiceField|field-props|flow)|stores\/(invite\.|answers|drafts)|choice\/(types|questions|answers))/
                  }
                ]
              }
            }
          }
        }
      }
    }
  },
  devToolbar: { enabled: false },
  // Files rather than inline sheets: one download serves every page, and print.css keeps its media attribute.
  build: { inlineStylesheets: 'never' },
  security: {
    // Written into each page as a meta element, with hashes for the few scripts that Astro inlines.
    // A host should add `frame-ancestors 'none'`, which a meta element cannot carry.
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data:",
        "font-src 'self'",
        "connect-src 'self'",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'self'"
      ]
    }
  }
})
