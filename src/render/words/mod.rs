//! The sentences of the documents.
