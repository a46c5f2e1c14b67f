import preact from '@astrojs/preact'
import sitemap from '@astrojs/sitemap'
import { defineConfig } from 'astro/config'
import { basePath } from './.ci/place.mjs'

export default defineConfig({
  output: 'static',
  site: process.env.SITE_URL ?? 'https://bentwise.example',
  base: basePath(),
  trailingSlash: 'always',
  integrations: [preact(), sitemap()],
  // Highlighted code would need inline styles, which the policy below forbids.
  markdown: { syntaxHighlight: false },
  // What every live part needs, in one file: split by use it would pack worse, and the first view has a limit.
  vite: {
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
