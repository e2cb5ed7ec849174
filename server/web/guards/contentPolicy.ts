import type { RequestHandler } from 'express'
import helmet from 'helmet'

/**
 * The headers that tell a browser what a page of this server may do: run and show what lies in files of this server,
 * nothing written into the page, nothing from elsewhere, in no frame.
 */
export const contentPolicy = (): RequestHandler =>
  helmet({
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'none'"],
        scriptSrc: ["'self'"],
        scriptSrcAttr: ["'none'"],
        styleSrc: ["'self'"],
        styleSrcAttr: ["'none'"],
        imgSrc: ["'self'"],
        connectSrc: ["'self'"],
        objectSrc: ["'none'"],
        baseUri: ["'none'"],
        formAction: ["'self'"],
        frameAncestors: ["'none'"],
      },
    },
    // the workshop's server speaks http; a proxy that speaks https in front sets this itself
    strictTransportSecurity: false,
    xFrameOptions: { action: 'deny' },
    // with no-referrer a browser hides from us that its own form was sent from here
    referrerPolicy: { policy: 'same-origin' },
  })
