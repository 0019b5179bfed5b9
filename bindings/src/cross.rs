//! How the records of `screens` cross the border: field by field, so that one that is added, renamed or dropped there fails the build here.

/// What crosses as something of ours.
pub(crate) trait Cross<T> {
    fn cross(self) -> T;
}

/// These cross as they are.
macro_rules! as_it_is {
    ($($kind:ty),+) => {$(
        impl Cross<$kind> for $kind {
            fn cross(self) -> $kind {
                self
            }
        }
    )+};
}

as_it_is!(String, bool, f64);

impl Cross<String> for &str {
    fn cross(self) -> String {
        self.to_owned()
    }
}

impl<T: Cross<U>, U> Cross<Option<U>> for Option<T> {
    fn cross(self) -> Option<U> {
        self.map(Cross::cross)
    }
}

impl<T: Cross<U>, U> Cross<Vec<U>> for Vec<T> {
    fn cross(self) -> Vec<U> {
        self.into_iter().map(Cross::cross).collect()
    }
}

/// Identifiers cross as their text.
macro_rules! as_text {
    ($($kind:ty),+) => {$(
        impl Cross<String> for $kind {
            fn cross(self) -> String {
                self.to_string()
            }
        }
    )+};
}

as_text!(
    trade::ids::LetterId,
    trade::ids::PhotoId,
    trade::ids::StructureId,
    screens::Place
);

/// A record of ours with the same fields as one of `screens`.
macro_rules! mirror {
    ($(
        $(#[$about:meta])*
        $name:ident of $there:path {
            $($(#[$of:meta])* $field:ident: $kind:ty,)+
        }
    )+) => {$(
        $(#[$about])*
        #[derive(Clone, Debug, uniffi::Record)]
        pub struct $name {
            $($(#[$of])* pub $field: $kind,)+
        }

        impl $crate::cross::Cross<$name> for $there {
            fn cross(self) -> $name {
                let $there { $($field),+ } = self;
                $name { $($field: $crate::cross::Cross::cross($field)),+ }
            }
        }
    )+};
}

pub(crate) use mirror;
