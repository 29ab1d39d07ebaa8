//! What a template may see.
