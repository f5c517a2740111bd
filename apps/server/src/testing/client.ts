import type { Observed } from './observe-answers.js';

export interface Answer<Body = unknown> {
  readonly status: number;
  readonly headers: Headers;
  readonly body: Body;
}

interface More {
  readonly headers?: Readonly<Record<string, string>>;
}

/** A person at a browser: keeps the cookie, sends the CSRF token, speaks JSON. */
export class Client {
  private cookie = '';
  private csrfToken = '';

  constructor(
    private readonly url: string,
    /** Told of every answer. */
    private readonly observe?: (observed: Observed) => void,
  ) {}

  async signIn(name: string, password: string): Promise<Answer> {
    const answer = await this.post('/api/sign-in', { name, password });
    const { csrfToken } = answer.body as { readonly csrfToken?: string };
    this.csrfToken = csrfToken ?? '';
    return answer;
  }

  /** The session is a phone's from now on: the phone page has asked with it. */
  onPhone(): Promise<Answer> {
    return this.get('/api/me', { headers: { 'X-Drumline-Page': 'phone' } });
  }

  get<Body = unknown>(path: string, more: More = {}): Promise<Answer<Body>> {
    return this.send('GET', path, undefined, more);
  }

  post<Body = unknown>(path: string, body: unknown, more: More = {}): Promise<Answer<Body>> {
    return this.send('POST', path, body, more);
  }

  put<Body = unknown>(path: string, body: unknown, more: More = {}): Promise<Answer<Body>> {
    return this.send('PUT', path, body, more);
  }

  delete<Body = unknown>(path: string, more: More = {}): Promise<Answer<Body>> {
    return this.send('DELETE', path, undefined, more);
  }

  /** Makes a thing that is not there yet. */
  make<Body = unknown>(path: string, body: unknown): Promise<Answer<Body>> {
    return this.put(path, body, { headers: { 'If-None-Match': '*' } });
  }

  /** Changes a thing from the version that was read. */
  change<Body = unknown>(path: string, version: number, body: unknown): Promise<Answer<Body>> {
    return this.put(path, body, { headers: { 'If-Match': `"${version}"` } });
  }

  async send<Body>(
    method: string,
    path: string,
    body: unknown,
    { headers = {} }: More,
  ): Promise<Answer<Body>> {
    const answer = await fetch(this.url + path, {
      method,
      headers: {
        ...(body === undefined ? {} : { 'Content-Type': 'application/json' }),
        ...(this.cookie === '' ? {} : { Cookie: this.cookie, 'X-CSRF-Token': this.csrfToken }),
        ...headers,
      },
      ...(body === undefined ? {} : { body: typeof body === 'string' ? body : JSON.stringify(body) }),
    });
    const set = answer.headers.getSetCookie()[0];
    if (set !== undefined) this.cookie = set.split(';')[0] ?? '';
    const text = await answer.text();
    const { status, headers: heads } = answer;
    const contentType = heads.get('Content-Type') ?? '';
    const read: unknown = /json/.test(contentType) ? JSON.parse(text) : text;
    this.observe?.({ method, path, status, contentType, body: read });
    return { status, headers: heads, body: read as Body };
  }
}
