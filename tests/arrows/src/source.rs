//! The paths that a module names, written out from the root of its crate. What is built for tests only is left out.

use proc_macro2::{TokenStream, TokenTree};
use std::collections::BTreeSet;
use std::path::Path;
use syn::visit::{self, Visit};
use syn::{Attribute, Item, ItemMod, UseTree};

/// The name that the root of a crate goes by among its modules.
pub const ROOT: &str = "root";

/// One path as its segments; one of the crate itself begins with `crate`.
pub type Segments = Vec<String>;

/// One module, those written inside it included.
#[derive(Clone, Debug, Default)]
pub struct Module {
    /// Its place below the root; the root's own is empty.
    pub place: Segments,
    /// The paths it names.
    pub names: BTreeSet<Segments>,
    /// Modules that have a file of their own.
    children: Vec<String>,
}

impl Module {
    /// The module of the first level that it belongs to.
    pub fn top(&self) -> &str {
        self.place.first().map_or(ROOT, String::as_str)
    }
}

/// Reads the root file of a crate and every module that it declares, the root first.
///
/// # Panics
/// When a file can't be read or is no Rust.
pub fn modules(root: &Path) -> Vec<Module> {
    let mut found = Vec::new();
    let folder = root.parent().unwrap_or(Path::new("."));
    let mut waiting = vec![(root.to_path_buf(), folder.to_path_buf(), Segments::new())];
    while let Some((file, folder, place)) = waiting.pop() {
        let text = std::fs::read_to_string(&file)
            .unwrap_or_else(|why| panic!("{}: {why}", file.display()));
        let module = module(&text, place).unwrap_or_else(|why| panic!("{}: {why}", file.display()));
        for child in &module.children {
            let flat = folder.join(format!("{child}.rs"));
            let nested = folder.join(child).join("mod.rs");
            let place = module.place.iter().chain([child]).cloned().collect();
            let file = if flat.exists() { flat } else { nested };
            waiting.push((file, folder.join(child), place));
        }
        found.push(module);
    }
    found.sort_by(|a, b| a.place.cmp(&b.place));
    found
}

/// Reads one module from its text.
///
/// # Errors
/// When the text is no Rust.
pub fn module(text: &str, place: Segments) -> syn::Result<Module> {
    let found = Module {
        place: place.clone(),
        ..Module::default()
    };
    let mut reader = Reader { place, found };
    reader.visit_file(&syn::parse_file(text)?);
    Ok(reader.found)
}

struct Reader {
    /// Where it is now: the module and those written inside it.
    place: Segments,
    found: Module,
}

impl Reader {
    fn name(&mut self, path: &[String]) {
        let mut path = path.to_vec();
        let mut from = match path.first().map(String::as_str) {
            Some("self" | "super") => self.place.clone(),
            _ => return self.keep(path),
        };
        while let Some("self" | "super") = path.first().map(String::as_str) {
            if path.remove(0) == "super" {
                from.pop();
            }
        }
        self.keep(
            ["crate".to_owned()]
                .into_iter()
                .chain(from)
                .chain(path)
                .collect(),
        );
    }

    fn keep(&mut self, path: Segments) {
        if path.len() > 1 {
            self.found.names.insert(path);
        }
    }

    fn use_tree(&mut self, before: &[String], tree: &UseTree) {
        let with = |name: &syn::Ident| [before, &[name.to_string()]].concat();
        match tree {
            UseTree::Path(path) => self.use_tree(&with(&path.ident), &path.tree),
            UseTree::Name(name) => self.name(&with(&name.ident)),
            UseTree::Rename(name) => self.name(&with(&name.ident)),
            UseTree::Glob(_) => self.name(&[before, &["*".to_owned()]].concat()),
            UseTree::Group(group) => group
                .items
                .iter()
                .for_each(|tree| self.use_tree(before, tree)),
        }
    }

    /// A macro's words are not parsed; the paths among them are.
    fn tokens(&mut self, tokens: TokenStream) {
        let mut path = Segments::new();
        let mut colons = 0;
        for token in tokens {
            match token {
                TokenTree::Ident(name) => {
                    if colons != 2 {
                        self.name(&std::mem::take(&mut path));
                    }
                    path.push(name.to_string());
                    colons = 0;
                }
                TokenTree::Punct(mark) if mark.as_char() == ':' => colons += 1,
                other => {
                    self.name(&std::mem::take(&mut path));
                    colons = 0;
                    if let TokenTree::Group(group) = other {
                        self.tokens(group.stream());
                    }
                }
            }
        }
        self.name(&path);
    }
}

impl<'ast> Visit<'ast> for Reader {
    fn visit_item(&mut self, item: &'ast Item) {
        let attributes = match item {
            Item::Fn(item) => &item.attrs,
            Item::Impl(item) => &item.attrs,
            Item::Mod(item) => &item.attrs,
            Item::Use(item) => &item.attrs,
            _ => &Vec::new(),
        };
        if !attributes.iter().any(for_tests) {
            visit::visit_item(self, item);
        }
    }

    fn visit_item_mod(&mut self, module: &'ast ItemMod) {
        if module.content.is_none() {
            return self.found.children.push(module.ident.to_string());
        }
        self.place.push(module.ident.to_string());
        visit::visit_item_mod(self, module);
        self.place.pop();
    }

    fn visit_item_use(&mut self, item: &'ast syn::ItemUse) {
        self.use_tree(&[], &item.tree);
    }

    fn visit_path(&mut self, path: &'ast syn::Path) {
        let segments: Segments = path
            .segments
            .iter()
            .map(|part| part.ident.to_string())
            .collect();
        self.name(&segments);
        visit::visit_path(self, path);
    }

    fn visit_macro(&mut self, used: &'ast syn::Macro) {
        self.visit_path(&used.path);
        self.tokens(used.tokens.clone());
    }
}

fn for_tests(attribute: &Attribute) -> bool {
    attribute.path().is_ident("cfg")
        && attribute
            .parse_args::<syn::Path>()
            .is_ok_and(|path| path.is_ident("test"))
}
