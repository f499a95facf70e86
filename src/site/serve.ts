import { createServer, type Server } from "node:http";
import sirv from "sirv";

/** The port that is tried first, and how many behind it. */
export const FIRST_PORT = 4820;
const PORTS_TRIED = 20;

/** The policy of every page; only the pane loads a script from elsewhere, Microsoft's Office library. */
export const CONTENT_SECURITY_POLICY = [
  "default-src 'self'",
  "script-src 'self' https://appsforoffice.microsoft.com",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const HASHED = /\.[0-9a-f]{8,}\.(js|css)$/;

/** Serves a built site to this machine alone, over plain http, on `port` or the next free one. */
export async function serve(folder: string, port = FIRST_PORT): Promise<{ server: Server; address: string }> {
  const files = sirv(folder, {
    dev: true,
    etag: true,
    setHeaders(response, file) {
      // Fixed names must be asked for again after each build; names with a hash never change.
      response.setHeader("Cache-Control", HASHED.test(file) ? "public, max-age=31536000, immutable" : "no-cache");
      response.setHeader("Content-Security-Policy", CONTENT_SECURITY_POLICY);
      response.setHeader("X-Content-Type-Options", "nosniff");
      response.setHeader("Referrer-Policy", "no-referrer");
      if (file.endsWith(".xlsx")) response.setHeader("Content-Type", WORKBOOK);
      if (file === "/functions.json") response.setHeader("Access-Control-Allow-Origin", "*");
    },
  });
  const server = createServer((request, response) => {
    files(request, response, () => {
      response.writeHead(404, { "Content-Type": "text/plain; charset=utf-8" }).end("Nothing is at this address.\n");
    });
  });
  const used = await listen(server, port);
  return { server, address: `http://localhost:${used}` };
}

/** Listens on the first free port from `port` on; 0 lets the machine choose. */
async function listen(server: Server, port: number): Promise<number> {
  for (let tried = 0; tried < PORTS_TRIED; tried++) {
    const error = await new Promise<NodeJS.ErrnoException | undefined>((resolve) => {
      server.once("error", resolve);
      server.listen({ port: port === 0 ? 0 : port + tried, host: "localhost" }, () => {
        server.off("error", resolve);
        resolve(undefined);
      });
    });
    if (error === undefined) {
      const bound = server.address();
      return typeof bound === "object" && bound !== null ? bound.port : port;
    }
    if (error.code !== "EADDRINUSE") throw error;
  }
  throw new Error(`ports ${port} to ${port + PORTS_TRIED - 1} are all in use; set PORT to a free one`);
}
