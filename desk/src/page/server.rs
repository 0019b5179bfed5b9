//! The server of the page.

use super::guard::{self, Guard};
use super::{Frame, block, draw};
use crate::clock::Clock;
use axum::Router;
use axum::extract::{DefaultBodyLimit, Form, Multipart, Path, State};
use axum::http::header::{CACHE_CONTROL, CONTENT_DISPOSITION, CONTENT_TYPE, LOCATION, SET_COOKIE};
use axum::http::{HeaderMap, HeaderValue, StatusCode, Uri};
use axum::middleware;
use axum::response::{IntoResponse, Response};
use axum::routing::{get, post};
use screens::{Action, FormOf, Place, PlanFile, Screens, Shutter, Trouble};
use std::fmt::Write as _;
use std::net::{Ipv4Addr, SocketAddr};
use std::sync::{Arc, Mutex, PoisonError};
use tokio::net::TcpListener;
use trade::ids::{LetterId, PhotoId, StructureId};
use trade::words::Words;

/// The largest picture that the page takes in: the book's own limit, and room for the form around it.
const MOST_BYTES: usize = 80 << 20;

/// What is served.
pub struct Serving {
    /// The book behind its screens.
    pub screens: Screens,
    /// The clock.
    pub clock: Clock,
    /// The port; 0 takes a free one.
    pub port: u16,
    /// The token.
    pub token: String,
    /// What is said where the book has no say: to strangers, and when something broke.
    pub outside: &'static Words,
}

#[derive(Clone)]
struct Shared {
    screens: Arc<Mutex<Screens>>,
    clock: Clock,
    outside: &'static Words,
}

impl Shared {
    /// Runs something on the book, away from the threads that answer. A tap that panicked has left no half-done write behind: the
    /// transaction rolled back, so the book may be used on.
    async fn with<T: Send + 'static>(
        &self,
        run: impl FnOnce(&mut Screens, Clock) -> T + Send + 'static,
    ) -> Result<T, Response> {
        let screens = Arc::clone(&self.screens);
        let clock = self.clock;
        tokio::task::spawn_blocking(move || {
            let mut screens = screens.lock().unwrap_or_else(PoisonError::into_inner);
            run(&mut screens, clock)
        })
        .await
        .map_err(|_| {
            let says = self.outside.text("desk-page-broke");
            (StatusCode::INTERNAL_SERVER_ERROR, says).into_response()
        })
    }

    /// The sentence of a key in the firm's language.
    async fn says(&self, key: &'static str) -> String {
        let outside = self.outside;
        self.with(move |screens, _| screens.words().unwrap_or(outside).text(key))
            .await
            .unwrap_or_else(|_| outside.text(key))
    }

    /// What was sent cannot be read.
    async fn unread(&self, key: &'static str) -> Response {
        (StatusCode::BAD_REQUEST, self.says(key).await).into_response()
    }
}

/// Serves the page until the process is ended. Calls `ready` with the address to open.
///
/// # Errors
/// Where the port is taken.
pub async fn serve(serving: Serving, ready: impl FnOnce(&str)) -> std::io::Result<()> {
    let listener = TcpListener::bind(SocketAddr::from((Ipv4Addr::LOCALHOST, serving.port))).await?;
    let port = listener.local_addr()?.port();
    let guard = Guard {
        token: serving.token.as_str().into(),
        port,
        words: serving.outside,
    };
    let shared = Shared {
        screens: Arc::new(Mutex::new(serving.screens)),
        clock: serving.clock,
        outside: serving.outside,
    };
    let app = Router::new()
        .route("/act", post(act))
        .route("/shoot", post(shoot))
        .route("/draft", post(draft))
        .route("/photo/{photo}", get(thumbnail))
        .route("/photo/{photo}/whole", get(whole))
        .route("/paper/{letter}", get(paper))
        .route("/plan/{structure}/{file}", get(plan_file))
        .route("/calendar.ics", get(calendar))
        .route("/style.css", get(style))
        .route("/page.js", get(script))
        .route("/mark.svg", get(icon))
        .route("/font/{weight}", get(font))
        .fallback(show)
        .layer(DefaultBodyLimit::max(MOST_BYTES))
        .layer(middleware::from_fn_with_state(guard, guard::watch))
        .with_state(shared);
    ready(&format!("http://127.0.0.1:{port}/?token={}", serving.token));
    axum::serve(listener, app).await
}

async fn show(State(shared): State<Shared>, headers: HeaderMap, uri: Uri) -> Response {
    let address = uri
        .path_and_query()
        .map_or("/", |path| path.as_str())
        .to_owned();
    let Ok(place) = address.parse::<Place>() else {
        let above = Above::trouble(shared.says("desk-page-nowhere").await);
        return page(&shared, Place::start(), above, StatusCode::NOT_FOUND).await;
    };
    let above = Above {
        notice: notice(&headers),
        ..Above::default()
    };
    page(&shared, place, above, StatusCode::OK).await
}

/// What is said above a page.
#[derive(Default)]
struct Above {
    /// What the last tap did.
    notice: Option<String>,
    /// What went wrong.
    trouble: Option<String>,
    /// The form that was refused.
    refused: Option<FormOf>,
}

impl Above {
    fn trouble(says: String) -> Self {
        Self {
            trouble: Some(says),
            ..Self::default()
        }
    }
}

async fn page(shared: &Shared, place: Place, above: Above, status: StatusCode) -> Response {
    let outside = shared.outside;
    let drawn = shared
        .with(move |screens, clock| {
            let language = screens.words().unwrap_or(outside).language().tag();
            let mut frame = Frame {
                place: &place,
                notice: above.notice.as_deref(),
                trouble: above.trouble.as_deref(),
                refused: above.refused.as_ref(),
                language,
            };
            match screens.show(&place, clock.now()) {
                Ok(screen) => (status, draw(&frame, &screen)),
                Err(Trouble { says }) => {
                    frame.trouble = Some(&says);
                    (StatusCode::NOT_FOUND, super::layout::lost(&frame))
                }
            }
        })
        .await;
    match drawn {
        Ok((status, markup)) => {
            let mut response = (status, markup).into_response();
            forget_notice(&mut response);
            response
        }
        Err(broken) => broken,
    }
}

/// One tap: the action, what stands in its fields, and where it was tapped.
async fn act(State(shared): State<Shared>, Form(fields): Form<Vec<(String, String)>>) -> Response {
    let Some((action, at)) = tapped(&fields) else {
        return shared.unread("desk-page-tap-unread").await;
    };
    let refused = match &action {
        Action::Submit { form, .. } => Some(form.clone()),
        _ => None,
    };
    let done = shared
        .with(move |screens, clock| {
            let moment = clock.now();
            keep_drafts(screens, &action, moment);
            screens.act(&action, moment)
        })
        .await;
    match done {
        Ok(Ok(next)) => to(&next.place, next.notice.as_deref()),
        Ok(Err(Trouble { says })) => {
            let above = Above {
                refused,
                ..Above::trouble(says)
            };
            page(&shared, at, above, StatusCode::UNPROCESSABLE_ENTITY).await
        }
        Err(broken) => broken,
    }
}

fn tapped(fields: &[(String, String)]) -> Option<(Action, Place)> {
    let field = |name: &str| {
        fields
            .iter()
            .find(|(field, _)| field == name)
            .map(|(_, value)| value.as_str())
    };
    let mut action: Action = serde_json::from_str(field("action")?).ok()?;
    if let Action::Submit { values, .. } = &mut action {
        values.extend(
            fields
                .iter()
                .filter(|(name, _)| !matches!(name.as_str(), "action" | "at"))
                .cloned(),
        );
    }
    Some((action, field("at")?.parse().ok()?))
}

/// What was typed is kept before it is tried, so that a refusal loses none of it.
fn keep_drafts(screens: &mut Screens, action: &Action, moment: acts::Moment) {
    let Action::Submit { form, values } = action else {
        return;
    };
    for (field, text) in values {
        let draft = Action::Draft {
            form: form.clone(),
            field: field.clone(),
            text: text.clone(),
        };
        // A draft that could not be kept is no reason to refuse the tap itself.
        let _ = screens.act(&draft, moment);
    }
}

async fn draft(State(shared): State<Shared>, body: String) -> Response {
    let Ok(action @ Action::Draft { .. }) = serde_json::from_str::<Action>(&body) else {
        return StatusCode::BAD_REQUEST.into_response();
    };
    match shared
        .with(move |screens, clock| screens.act(&action, clock.now()))
        .await
    {
        Ok(Ok(_)) => StatusCode::NO_CONTENT.into_response(),
        Ok(Err(Trouble { says })) => (StatusCode::UNPROCESSABLE_ENTITY, says).into_response(),
        Err(broken) => broken,
    }
}

async fn shoot(State(shared): State<Shared>, form: Multipart) -> Response {
    let Some((shutter, at, bytes)) = picture(form).await else {
        return shared.unread("desk-page-picture-unread").await;
    };
    let shot = shared
        .with(move |screens, clock| {
            screens.shoot(&shutter, &bytes, clock.now())?;
            screens.words().map(|words| words.text("saved-picture"))
        })
        .await;
    match shot {
        Ok(Ok(notice)) => to(&at, Some(&notice)),
        Ok(Err(Trouble { says })) => {
            page(
                &shared,
                at,
                Above::trouble(says),
                StatusCode::UNPROCESSABLE_ENTITY,
            )
            .await
        }
        Err(broken) => broken,
    }
}

async fn picture(mut form: Multipart) -> Option<(Shutter, Place, Vec<u8>)> {
    let (mut shutter, mut at, mut bytes) = (None, None, None);
    while let Ok(Some(field)) = form.next_field().await {
        match field.name() {
            Some("shutter") => shutter = serde_json::from_str(&field.text().await.ok()?).ok(),
            Some("at") => at = field.text().await.ok()?.parse().ok(),
            Some("picture") => bytes = Some(field.bytes().await.ok()?.to_vec()),
            _ => {}
        }
    }
    Some((shutter?, at?, bytes?))
}

/// Goes to a place, with a word about what was done.
fn to(place: &Place, notice: Option<&str>) -> Response {
    let mut response = StatusCode::SEE_OTHER.into_response();
    if let Ok(location) = HeaderValue::from_str(&block::address(place)) {
        response.headers_mut().insert(LOCATION, location);
    }
    if let Some(notice) = notice {
        set_cookie(
            &mut response,
            &format!(
                "said={}; HttpOnly; SameSite=Strict; Path=/",
                hex(notice.as_bytes())
            ),
        );
    }
    response
}

/// Bytes as lower-case hexadecimal.
pub(crate) fn hex(bytes: &[u8]) -> String {
    bytes.iter().fold(String::new(), |mut text, byte| {
        let _ = write!(text, "{byte:02x}");
        text
    })
}

/// What the last tap did, carried over one page.
fn notice(headers: &HeaderMap) -> Option<String> {
    let cookies = headers.get(axum::http::header::COOKIE)?.to_str().ok()?;
    let written = cookies
        .split(';')
        .filter_map(|cookie| cookie.trim().split_once('='))
        .find(|(name, _)| *name == "said")
        .map(|(_, value)| value)?;
    let bytes: Option<Vec<u8>> = (0..written.len())
        .step_by(2)
        .map(|at| u8::from_str_radix(written.get(at..at + 2)?, 16).ok())
        .collect();
    String::from_utf8(bytes?)
        .ok()
        .filter(|notice| !notice.is_empty())
}

fn forget_notice(response: &mut Response) {
    set_cookie(
        response,
        "said=; HttpOnly; SameSite=Strict; Path=/; Max-Age=0",
    );
}

fn set_cookie(response: &mut Response, cookie: &str) {
    if let Ok(cookie) = HeaderValue::from_str(cookie) {
        response.headers_mut().append(SET_COOKIE, cookie);
    }
}

async fn thumbnail(State(shared): State<Shared>, Path(photo): Path<String>) -> Response {
    jpeg(&shared, photo, Screens::thumbnail).await
}

async fn whole(State(shared): State<Shared>, Path(photo): Path<String>) -> Response {
    jpeg(&shared, photo, Screens::original).await
}

async fn jpeg(
    shared: &Shared,
    photo: String,
    read: fn(&Screens, PhotoId) -> Result<Vec<u8>, Trouble>,
) -> Response {
    let Ok(photo) = photo.parse::<PhotoId>() else {
        return StatusCode::NOT_FOUND.into_response();
    };
    match shared.with(move |screens, _| read(screens, photo)).await {
        Ok(Ok(bytes)) => ([(CONTENT_TYPE, kind(&bytes))], bytes).into_response(),
        Ok(Err(Trouble { says })) => (StatusCode::NOT_FOUND, says).into_response(),
        Err(broken) => broken,
    }
}

/// By their first bytes: the book keeps no others than these three.
fn kind(bytes: &[u8]) -> &'static str {
    match bytes {
        [0xff, 0xd8, ..] => "image/jpeg",
        [0x89, b'P', b'N', b'G', ..] => "image/png",
        _ => "image/heic",
    }
}

async fn paper(State(shared): State<Shared>, Path(letter): Path<String>) -> Response {
    let Ok(letter) = letter.parse::<LetterId>() else {
        return StatusCode::NOT_FOUND.into_response();
    };
    match shared.with(move |screens, _| screens.paper(letter)).await {
        Ok(Ok(pdf)) => (
            [
                (CONTENT_TYPE, "application/pdf"),
                (CONTENT_DISPOSITION, "inline; filename=\"letter.pdf\""),
            ],
            pdf,
        )
            .into_response(),
        Ok(Err(Trouble { says })) => (StatusCode::NOT_FOUND, says).into_response(),
        Err(broken) => broken,
    }
}

async fn plan_file(
    State(shared): State<Shared>,
    Path((structure, file)): Path<(String, String)>,
) -> Response {
    let named = PlanFile::ALL.into_iter().find(|one| one.name() == file);
    let (Ok(structure), Some(file)) = (structure.parse::<StructureId>(), named) else {
        return StatusCode::NOT_FOUND.into_response();
    };
    match shared
        .with(move |screens, _| screens.plan_file(structure, file))
        .await
    {
        Ok(Ok(text)) => (
            [
                (CONTENT_TYPE, file.media().to_owned()),
                (
                    CONTENT_DISPOSITION,
                    format!("attachment; filename=\"{}\"", file.name()),
                ),
            ],
            text,
        )
            .into_response(),
        Ok(Err(Trouble { says })) => (StatusCode::NOT_FOUND, says).into_response(),
        Err(broken) => broken,
    }
}

async fn calendar(State(shared): State<Shared>) -> Response {
    match shared
        .with(|screens, clock| screens.calendar(clock.now()))
        .await
    {
        Ok(Ok(text)) => (
            [
                (CONTENT_TYPE, "text/calendar; charset=utf-8"),
                (
                    CONTENT_DISPOSITION,
                    "attachment; filename=\"ladderbook.ics\"",
                ),
            ],
            text,
        )
            .into_response(),
        Ok(Err(Trouble { says })) => (StatusCode::INTERNAL_SERVER_ERROR, says).into_response(),
        Err(broken) => broken,
    }
}

async fn style() -> impl IntoResponse {
    fixed("text/css; charset=utf-8", include_bytes!("style.css"))
}

async fn script() -> impl IntoResponse {
    fixed("text/javascript; charset=utf-8", include_bytes!("page.js"))
}

async fn icon() -> impl IntoResponse {
    fixed("image/svg+xml", include_bytes!("mark.svg"))
}

async fn font(Path(weight): Path<String>) -> Response {
    match weight.as_str() {
        "regular.woff2" => {
            fixed("font/woff2", include_bytes!("font/regular.woff2")).into_response()
        }
        "bold.woff2" => fixed("font/woff2", include_bytes!("font/bold.woff2")).into_response(),
        _ => StatusCode::NOT_FOUND.into_response(),
    }
}

fn fixed(kind: &'static str, bytes: &'static [u8]) -> impl IntoResponse {
    (
        [(CONTENT_TYPE, kind), (CACHE_CONTROL, "max-age=3600")],
        bytes,
    )
}
