//! Who may speak to the page: this computer, with the token, from the page itself.
//!
//! A page on the loopback is reachable by every other page that a browser has open. So each request must name this host (a foreign name
//! that resolves here is refused), bear the token that was printed at the start, and, where it changes something, come from this page.

use axum::extract::{Request, State};
use axum::http::header::{
    CACHE_CONTROL, CONTENT_SECURITY_POLICY, COOKIE, HOST, HeaderName, HeaderValue, LOCATION,
    ORIGIN, REFERRER_POLICY, SET_COOKIE, X_CONTENT_TYPE_OPTIONS,
};
use axum::http::{HeaderMap, Method, StatusCode, Uri};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};
use std::sync::Arc;
use trade::words::Words;

/// Nothing from elsewhere, no script but ours, no frame around us.
const POLICY: &str = "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; \
     font-src 'self'; connect-src 'self'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'";
const COOKIE_NAME: &str = "ladderbook";

/// What the guard compares with.
#[derive(Clone)]
pub(super) struct Guard {
    /// The token that the address printed at the start bears.
    pub(super) token: Arc<str>,
    /// The port.
    pub(super) port: u16,
    /// What a stranger is told with: this computer's language, for the firm's is the book's.
    pub(super) words: &'static Words,
}

impl Guard {
    fn refuses(&self, status: StatusCode, why: &str) -> Response {
        sealed((status, self.words.text(why)).into_response())
    }

    fn is_ours(&self, host: &str) -> bool {
        ["127.0.0.1", "localhost", "[::1]"]
            .iter()
            .any(|name| host == format!("{name}:{}", self.port))
    }

    fn host_is_ours(&self, headers: &HeaderMap) -> bool {
        text(headers, &HOST).is_some_and(|host| self.is_ours(host))
    }

    /// Browsers say where a post comes from. One that says nothing is no browser, and then the token alone must do.
    fn origin_is_ours(&self, headers: &HeaderMap) -> bool {
        let site = headers
            .get("sec-fetch-site")
            .and_then(|site| site.to_str().ok());
        if matches!(site, Some("cross-site" | "same-site")) {
            return false;
        }
        match text(headers, &ORIGIN) {
            None => true,
            Some(origin) => origin
                .strip_prefix("http://")
                .is_some_and(|host| self.is_ours(host)),
        }
    }

    fn has_token(&self, headers: &HeaderMap) -> bool {
        text(headers, &COOKIE).is_some_and(|cookies| {
            cookies
                .split(';')
                .filter_map(|cookie| cookie.trim().split_once('='))
                .any(|(name, value)| name == COOKIE_NAME && same(value, &self.token))
        })
    }
}

fn text<'a>(headers: &'a HeaderMap, name: &HeaderName) -> Option<&'a str> {
    headers.get(name).and_then(|value| value.to_str().ok())
}

/// Compares without telling by its time how much was right.
fn same(one: &str, other: &str) -> bool {
    one.len() == other.len()
        && one
            .bytes()
            .zip(other.bytes())
            .fold(0, |unlike, (a, b)| unlike | (a ^ b))
            == 0
}

/// Lets a request through, or says why not.
pub(super) async fn watch(State(guard): State<Guard>, request: Request, next: Next) -> Response {
    let headers = request.headers();
    if !guard.host_is_ours(headers) {
        return guard.refuses(StatusCode::MISDIRECTED_REQUEST, "desk-page-foreign");
    }
    if let Some(token) = token_in(request.uri()) {
        return if same(token, &guard.token) {
            enter(&guard)
        } else {
            guard.refuses(StatusCode::FORBIDDEN, "desk-page-other-token")
        };
    }
    if !guard.has_token(headers) {
        return guard.refuses(StatusCode::FORBIDDEN, "desk-page-no-token");
    }
    if request.method() != Method::GET && !guard.origin_is_ours(headers) {
        return guard.refuses(StatusCode::FORBIDDEN, "desk-page-from-elsewhere");
    }
    sealed(next.run(request).await)
}

fn token_in(uri: &Uri) -> Option<&str> {
    uri.query()?
        .split('&')
        .find_map(|pair| pair.strip_prefix("token="))
}

/// The token leaves the address at once, so that it is not left in the browser's history.
fn enter(guard: &Guard) -> Response {
    let cookie = format!(
        "{COOKIE_NAME}={}; HttpOnly; SameSite=Strict; Path=/",
        guard.token
    );
    let mut response = StatusCode::SEE_OTHER.into_response();
    if let Ok(cookie) = HeaderValue::from_str(&cookie) {
        response.headers_mut().insert(SET_COOKIE, cookie);
    }
    response
        .headers_mut()
        .insert(LOCATION, HeaderValue::from_static("/"));
    sealed(response)
}

fn sealed(mut response: Response) -> Response {
    let headers = response.headers_mut();
    headers.insert(CONTENT_SECURITY_POLICY, HeaderValue::from_static(POLICY));
    headers.insert(X_CONTENT_TYPE_OPTIONS, HeaderValue::from_static("nosniff"));
    headers.insert(REFERRER_POLICY, HeaderValue::from_static("same-origin"));
    headers
        .entry(CACHE_CONTROL)
        .or_insert(HeaderValue::from_static("no-store"));
    response
}
