// The install script of puppeteer downloads a browser, which fails the whole install on a closed
// network. src/print finds a browser instead: the system's, or the one an npm package carries.
module.exports = { skipDownload: true };
